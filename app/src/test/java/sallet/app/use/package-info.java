/** Tests of what a grower can ask. */
@NullMarked
package sallet.app.use;

import org.jspecify.annotations.NullMarked;
