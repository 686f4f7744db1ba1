/** Tests of what stands and what is learned. */
@NullMarked
package sallet.learn;

import org.jspecify.annotations.NullMarked;
