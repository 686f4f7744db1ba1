/** What stands now and what the household's own counts and weighings teach. */
@NullMarked
package sallet.learn;

import org.jspecify.annotations.NullMarked;
