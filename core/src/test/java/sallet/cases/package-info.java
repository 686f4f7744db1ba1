/**
 * Outside checks as data: CSV files of published or independently computed values, and the code
 * that compares Sallet with each of their rows. The same code runs under JUnit on the copies
 * shipped in the test resources and under the case runner on any folder of files with the same
 * names and columns.
 */
@NullMarked
package sallet.cases;

import org.jspecify.annotations.NullMarked;
