/** Linear programmes that grow, and who solves them. */
@NullMarked
package sallet.plan.linear;

import org.jspecify.annotations.NullMarked;
