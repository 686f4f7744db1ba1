/** Daylight and lamp light at every place of the room, hour by hour. */
@NullMarked
package sallet.light;

import org.jspecify.annotations.NullMarked;
