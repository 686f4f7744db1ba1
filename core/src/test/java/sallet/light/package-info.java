/** Checks of the light in the room and outdoors. */
@NullMarked
package sallet.light;

import org.jspecify.annotations.NullMarked;
