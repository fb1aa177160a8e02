package dev.fairlead.web.access;

import java.util.function.Supplier;

/**
 * What pages need to let devices in and send them away.
 *
 * @param shared whether devices of the network are answered at all
 * @param address under which they reach the pages
 * @param fingerprint of the certificate that they see; empty without one
 */
public record Access(
        Sessions sessions, Pairing pairing, boolean shared, Supplier<String> address, String fingerprint) {}
