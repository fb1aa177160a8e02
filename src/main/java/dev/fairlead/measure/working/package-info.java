/** How a number came about, as people read it: workings, and the tables of published figures behind them. */
package dev.fairlead.measure.working;
