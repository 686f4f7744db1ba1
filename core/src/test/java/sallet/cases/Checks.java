package sallet.cases;

import java.util.Map;

/** The check files of one subject. */
public interface Checks {
  /** How each file is checked, by its path below the folder of cases ("light/sun_patch.csv"). */
  Map<String, RowCheck> byFile();
}
