/**
 * The folder of case files: listing, reading, atomic saving, earlier versions, and what happens when two windows write.
 */
package dev.fairlead.web.store;
