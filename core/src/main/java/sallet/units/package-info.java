/** Physical quantities as a grower writes them ("1.2 m", "72 °F") and their SI values. */
@NullMarked
package sallet.units;

import org.jspecify.annotations.NullMarked;
