/** What reports of one case and of many share: SVG shapes and inks, a picture with its table, line breaks. */
package dev.fairlead.drawing;
