/** From seed to bowl: catalogue, germination, daily growth of one plant, picking rules, bolting. */
@NullMarked
package sallet.crop;

import org.jspecify.annotations.NullMarked;
