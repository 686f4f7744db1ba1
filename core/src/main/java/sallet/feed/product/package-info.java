/**
 * What stands on the shelf: salts by formula, fertilisers by label, acids and bases by strength.
 */
@NullMarked
package sallet.feed.product;

import org.jspecify.annotations.NullMarked;
