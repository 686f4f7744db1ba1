package sallet.app.cli;

import java.util.Map;
import java.util.function.Supplier;

/**
 * What a command tells, in each form it can be asked for; a form is made only when it is wanted.
 *
 * @param text for people, lines up to 80 letters
 * @param json for programs
 * @param files for {@code --out}: contents by file name
 */
record Report(Supplier<String> text, Supplier<String> json, Supplier<Map<String, String>> files) {}
