/**
 * Physical quantities as a grower writes them ("1.2 m", "72 °F") and their values in the one unit
 * the program reckons with. Factors: NIST Special Publication 811, 2008 edition, appendix B.
 */
@NullMarked
package sallet.units;

import org.jspecify.annotations.NullMarked;
