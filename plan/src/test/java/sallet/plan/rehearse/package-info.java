@NullMarked
package sallet.plan.rehearse;

import org.jspecify.annotations.NullMarked;
