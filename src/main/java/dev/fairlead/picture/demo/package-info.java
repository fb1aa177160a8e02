/** Pictures drawn from a case, so that measuring on them has to find the case's own numbers again. */
@NullMarked
package dev.fairlead.picture.demo;

import org.jspecify.annotations.NullMarked;
