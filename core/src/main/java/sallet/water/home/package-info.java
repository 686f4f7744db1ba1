/** From a household's own bench, pump and tank to answers about water. */
@NullMarked
package sallet.water.home;

import org.jspecify.annotations.NullMarked;
