/** How a number came about, as people read it: workings, and the tables of published figures behind them. */
@NullMarked
package dev.fairlead.measure.working;

import org.jspecify.annotations.NullMarked;
