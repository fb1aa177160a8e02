package dev.fairlead.web;

import dev.fairlead.web.access.ShareCertificate;
import dev.fairlead.web.page.Checks;
import dev.fairlead.web.page.Prints;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * How to serve.
 *
 * @param folder of the case files; made when it is not there
 * @param port to listen on; 0 takes a free one
 * @param checks how cases are checked
 * @param prints how reports and sheets are made; empty when this program has no part for that
 * @param today the day that visits and waivers are given by default, and for which cases are judged that name no day
 * @param secrets folder that belongs to the user alone, for what lets browsers in
 * @param share how other devices of a clinic's own network reach the pages; empty for this machine alone
 */
public record ServerSettings(
        Path folder,
        int port,
        Checks checks,
        Optional<Prints> prints,
        Supplier<LocalDate> today,
        Path secrets,
        Optional<Share> share) {
    /** The one address on which devices of the network are answered, and the certificate that stands for it. */
    public record Share(String address, ShareCertificate certificate) {}
}
