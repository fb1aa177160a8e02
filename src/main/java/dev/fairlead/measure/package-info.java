/** From a case to named measurements with their working, and to the facts that the rules look at. */
package dev.fairlead.measure;
