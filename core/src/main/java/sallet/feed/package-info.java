/**
 * Nutrient solutions: what is in the water and the bags, what it becomes when mixed, what to add,
 * and what the reservoir turns into while plants drink from it. Each sub-package is one subject;
 * arrows run ion, solution, product, water, target, recipe, stock, and meter, dose, reservoir.
 */
@NullMarked
package sallet.feed;

import org.jspecify.annotations.NullMarked;
