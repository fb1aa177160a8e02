/** What reports of one case and of many share: SVG shapes and inks, a picture with its table, line breaks. */
@NullMarked
package dev.fairlead.drawing;

import org.jspecify.annotations.NullMarked;
