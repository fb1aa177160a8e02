/**
 * Who may ask for pages: the printed link, paired devices with their roles, and the certificate of a clinic's own
 * network.
 */
@NullMarked
package dev.fairlead.web.access;

import org.jspecify.annotations.NullMarked;
