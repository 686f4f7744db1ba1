/** Which bags and how much: the weighable recipe nearest to a target. */
@NullMarked
package sallet.feed.recipe;

import org.jspecify.annotations.NullMarked;
