package sallet.app.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.journal.Entry;
import sallet.journal.Event;
import sallet.journal.Journal;
import sallet.journal.Where;

/** Journals as comma-separated values. */
class JournalCsvTest {
  private static final Catalogue CATALOGUE = Catalogue.builtIn();
  private static final Household HOUSE =
      ((HouseholdFile.Good)
              new HouseholdReader(CATALOGUE)
                  .read(
                      "place: {latitude: 52.5, longitude: 13.4, timeZone: Europe/Berlin}"
                          .getBytes(StandardCharsets.UTF_8)))
          .household();
  private static final String HEADER = "date,event,batch,crop,count,place,grams,value,unit,note\n";

  @TempDir Path folder;

  private static JournalFile read(String text) {
    return JournalCsv.of(text, HOUSE, CATALOGUE);
  }

  private static Journal good(String text) {
    JournalFile file = read(text);
    assertThat(file).as(file.toString()).isInstanceOf(JournalFile.Good.class);
    return ((JournalFile.Good) file).journal();
  }

  private static List<String> faults(String text) {
    JournalFile file = read(text);
    return file instanceof JournalFile.Faulty faulty
        ? faulty.faults().stream().map(Fault::text).toList()
        : List.of();
  }

  @Test
  void everyEventIsReadAndWrittenAgain() {
    String rows =
        HEADER
            + "2026-12-01,sow,a,mizuna,4,4,,,,\"first, in coir\"\n"
            + "2026-12-05,emerge,a,,3,,,,,\n"
            + "2026-12-09,move,a,mizuna,3,nursery,,,,\n"
            + "2026-12-20,move,a,,2,A1+A2,,,,\n"
            + "2027-01-02,pick,a,,1,A1,12.5,40,%,\n"
            + "2027-01-03,weigh,a,,,A2,55,,,\n"
            + "2027-01-03,width,a,,,A2,,21,cm,\n"
            + "2027-01-09,lift,a,,1,A2,60,,,\n"
            + "2027-01-10,lost,a,,1,A1,,,,\n"
            + "2027-01-10,ec,,,,reservoir,,1.8,mS/cm,\n"
            + "2027-01-10,ph,,,,,,6,,\n"
            + "2027-01-10,level,,,,,,40,L,\n"
            + "2027-01-10,top-up,,,,reservoir,,6.5,L,\n"
            + "2027-01-10,renew,,,,,,55,L,\n"
            + "2027-01-10,solution-temperature,,,,,,18.5,°C,\n"
            + "2027-01-10,air-temperature,,,,room,,21,°C,\n"
            + "2027-01-10,humidity,,,,,,55,%,\n"
            + "2027-01-10,ppfd,,,,A1,,210,µmol/m²/s,\n"
            + "2027-01-10,lux,,,,A1+A2,,9000,lx,\n"
            + "2027-01-10,pot-dry,,,,A3,,190,g,\n"
            + "2027-01-10,pot-wet,,,,A1,,905,g,\n"
            + "2027-01-10,pot-mass,,,,A1,,812,g,\n";
    Journal journal = good(rows);
    assertThat(journal.entries())
        .extracting(Entry::event)
        .containsOnlyOnce(Event.SOW)
        .contains(Event.values());
    assertThat(JournalCsv.write(journal.entries()).replace("\r\n", "\n")).isEqualTo(rows);
    assertThat(journal.entries().get(0).place()).isEqualTo(new Where.Cells(4));
    assertThat(journal.entries().get(3).place()).isEqualTo(new Where.Pots(List.of("A1", "A2")));
    assertThat(journal.entries().get(0).note()).isEqualTo("first, in coir");
    assertThat(journal.entries().get(3).line()).isEqualTo(5);
  }

  /** The time of the day is a column for those who write it down. */
  @Test
  void timesOfTheDayAreReadAndWrittenAgain() {
    String rows =
        HEADER.strip()
            + ",time\n"
            + "2027-01-10,pot-wet,,,,A1,,905,g,,07:00\n"
            + "2027-01-10,pot-mass,,,,A1,,812,g,,14:30\n"
            + "2027-01-10,ph,,,,,,6,,,\n";
    Journal journal = good(rows);
    assertThat(JournalCsv.write(journal.entries()).replace("\r\n", "\n")).isEqualTo(rows);
    assertThat(good(rows.replace("07:00", "7:00")).entries()).isEqualTo(journal.entries());
    assertThat(faults(rows.replace("07:00", "7 am")).get(0))
        .contains("line 2: \"7 am\" is no time of the day; write hours and minutes like 07:30");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "air-temperature | 77 | °F | 25",
        "level | 10 | gal | 37.85411784",
        "width | 10 | in | 25.4",
        "ec | 1800 | uS/cm | 1.8",
        "ec | 1.8 | dS/m | 1.8",
        "top-up | 2 | gal | 7.570823568",
        "pot-mass | 1.2 | kg | 1200",
        "pot-wet | 2 | lb | 907.18474",
        "pot-dry | 8 | oz | 226.796185",
        "lux | 9 | klx | 9000",
        "ph | 6.1 | pH | 6.1",
        "humidity | 55 |  | 55",
      })
  void unitsAreTurnedIntoTheEventsOwn(String event, String value, String unit, double base) {
    String place = event.startsWith("pot-") ? "A1" : "";
    String row =
        "2026-12-05,%s,a,,,%s,,%s,%s,\n".formatted(event, place, value, unit == null ? "" : unit);
    OptionalDouble read = good(HEADER + row).entries().get(0).value();
    assertThat(read.orElseThrow()).isCloseTo(base, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "3.7.2027,ec,,,,,,1.8,,|line 2: \"3.7.2027\" is not a date; write year, month and day like"
            + " 2027-07-03",
        "1027-07-03,ec,,,,,,1.8,,|line 2: 1027-07-03 lies outside what is allowed (years 2000 to"
            + " 2199)",
        "2027-07-03,sow,a,mizunna,2,,,,,|line 2: \"mizunna\" is not a crop of the catalogue or your"
            + " file (did you mean \"mizuna\"?)",
        "2027-07-03,sow,a,,2,,,,,|line 2: a sowing needs its crop, by its name in docs/crops.md or"
            + " your file",
        "2027-07-03,sow,a,mizuna,2,tray,,,,|line 2: \"tray\" is not the number of cells sown; write"
            + " it like 8",
        "2027-07-03,pick,a,,1,Z9,5,,,|line 2: \"Z9\" is no pot of your bench; the first is A1, the"
            + " last C6",
        "2027-07-03,pick,a,,2,A1+A1,5,,,|line 2: pot A1 is named twice",
        "2027-07-03,pick,a,,-2,A1,5,,,|line 2: \"-2\" is not a count; write a whole number from 1"
            + " on",
        "2027-07-03,pick,a,,1,A1,-5,,,|line 2: \"-5\" are no grams; write a number from 0 on, like"
            + " 12.5",
        "2027-07-03,pick,a,,1,A1,,140,,|line 2: 140 lies outside what can be (0.1 to 100 %)",
        "2027-07-03,pick,,,1,A1,5,,,|line 2: a row of \"pick\" needs the name of its batch",
        "2027-07-03,move,a,,1,,,,,|line 2: a move needs its place: nursery, or pots like A1+C6",
        "2027-07-03,weigh,a,,1,A1,,,,|line 2: a weighing needs its grams: the fresh mass of one"
            + " standing plant",
        "2027-07-03,ph,,,,,,15,,|line 2: 15 lies outside what can be (0 to 14)",
        "2027-07-03,ph,,,,,,six,,|line 2: \"six\" is not a number; write one with a decimal point,"
            + " like 1.8",
        "2027-07-03,ec,,,,,,1.8,ppm,|line 2: the unit \"ppm\" is not one of ec; leave it out or"
            + " write mS/cm",
        "2027-07-03,ec,,,,,,,,|line 2: a row of \"ec\" needs its value",
        "2027-07-03,level,,,,,,4,m,|line 2: \"4 m\" is not a volume: the unit is \"m\"; use L, mL,"
            + " m³, gal, qt, pt, fl oz, imp gal, in³ or ft³",
        "2027-07-03,ec,,,,,,1.8,,note,more|line 2: has 11 cells and the header 10; put a text with"
            + " commas in quotation marks",
      })
  void aWrongCellIsToldInASentenceWithItsLine(String row, String sentence) {
    assertThat(faults(HEADER + row + "\n")).containsExactly(sentence);
  }

  @Test
  void anUnknownEventNamesTheKnownOnes() {
    assertThat(faults(HEADER + "2027-07-03,harvest,a,,1,A1,5,,,\n").get(0))
        .startsWith(
            "line 2: \"harvest\" is no event; the events are sow, emerge, move, pick, lift,")
        .endsWith("lux, pot-dry, pot-wet, pot-mass");
  }

  @Test
  void allFaultsAreToldInOneGo() {
    String text = HEADER + "x,y,,,,,,,,\n2027-07-03,pick,,,0,Z9,-1,,,\n";
    assertThat(faults(text)).hasSize(6);
  }

  @Test
  void unknownColumnsWarnAndTheOrderOfColumnsIsFree() {
    String text = "event,weather,date,value\nec,fine,2027-07-03,1.8\n\n";
    JournalFile file = read(text);
    assertThat(((JournalFile.Good) file).journal().entries()).hasSize(1);
    assertThat(((JournalFile.Good) file).warnings())
        .extracting(Fault::text)
        .containsExactly("line 1: the column \"weather\" is not known and was not read");
  }

  @Test
  void tableProgramsMayWriteMarksAndSemicolons() {
    String rows = "\ufeffdate;event;value\r\n2027-07-03;ec;1.8\r\n";
    assertThat(good(rows).entries()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "batch,crop|line 1: the column \"date\" is missing",
        "date,event,event|line 1: the column \"event\" stands there twice",
        "date,event,value,note\\n"
            + "2027-07-03,ec,1.8,\"open|line 2: a quotation mark is opened and not closed",
      })
  void aFileThatIsNoJournalIsTold(String text, String start) {
    assertThat(faults(text.replace("\\n", "\n")).get(0)).startsWith(start);
  }

  @Test
  void anEmptyFileIsTold() {
    assertThat(faults("").get(0)).startsWith("the file is empty");
    assertThat(good(HEADER).entries()).isEmpty();
  }

  @Test
  void aFileThatCannotBeReadIsTold() throws Exception {
    assertThat(JournalCsv.read(folder.resolve("none.csv").toString(), HOUSE, CATALOGUE))
        .hasToString(
            "Faulty[faults=[Fault[path=, line=0, sentence=there is no such file; check its name and"
                + " folder]]]");
    assertThat(JournalCsv.read(folder.toString(), HOUSE, CATALOGUE).toString())
        .contains("is a folder");
    Path latin = Files.write(folder.resolve("latin.csv"), new byte[] {(byte) 0xe4, 'b'});
    assertThat(JournalCsv.read(latin.toString(), HOUSE, CATALOGUE).toString()).contains("UTF-8");
    assertThat(JournalCsv.read("a\0b", HOUSE, CATALOGUE).toString()).contains("not a file name");
  }
}
