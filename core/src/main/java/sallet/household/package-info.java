/**
 * What a grower can read off the wall, the box or a ruler: the immutable description of one
 * household, its room, bench, lamp, nursery and reservoir. Knows no other package but units.
 */
@NullMarked
package sallet.household;

import org.jspecify.annotations.NullMarked;
