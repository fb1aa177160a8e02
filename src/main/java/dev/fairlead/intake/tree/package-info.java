/** A case as a tree whose single values can be changed, for forms and for trying other plans. */
package dev.fairlead.intake.tree;
