/** Source waters by analysis, their units, charge balance and blends. */
@NullMarked
package sallet.feed.water;

import org.jspecify.annotations.NullMarked;
