/** What the page of measuring sends and gets. */
package dev.fairlead.web.measure;
