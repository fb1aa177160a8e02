package dev.fairlead.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.audit.agree.Agreement;
import dev.fairlead.audit.agree.Detection;
import dev.fairlead.audit.agree.Reviewer;
import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.source.TableException;
import dev.fairlead.audit.write.AgreementText;
import dev.fairlead.audit.write.DetectionText;
import dev.fairlead.rules.catalogue.Catalogue;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** What an audit is held against besides its rules, when a call asks for it. */
final class AuditExtras {
    private final Optional<Detection> detection;
    private final Optional<Agreement> agreement;

    private AuditExtras(Optional<Detection> detection, Optional<Agreement> agreement) {
        this.detection = detection;
        this.agreement = agreement;
    }

    static AuditExtras read(Path truth, Path verdicts, Catalogue catalogue) throws IOException {
        try {
            return new AuditExtras(
                    truth == null ? Optional.empty() : Optional.of(Detection.read(truth, catalogue)),
                    verdicts == null
                            ? Optional.empty()
                            : Optional.of(new Agreement(Reviewer.read(verdicts, catalogue), catalogue)));
        } catch (NoSuchFileException e) {
            throw new Main.Stop(ExitCode.USAGE, e.getMessage() + ": there is no such file");
        } catch (TableException e) {
            throw new Main.Stop(ExitCode.USAGE, e.getMessage());
        }
    }

    void add(Audit.Done done) {
        detection.ifPresent(d -> d.add(done.row()));
        agreement.ifPresent(a -> a.add(done.row()));
    }

    Optional<Detection.Result> findings() {
        return detection.map(Detection::result);
    }

    Optional<Agreement.Result> agreement() {
        return agreement.map(Agreement::result);
    }

    String text() {
        return agreement().map(AgreementText::of).orElse("")
                + findings().map(DetectionText::of).orElse("");
    }

    void json(ObjectNode root) {
        agreement().ifPresent(a -> AgreementText.json(a, root));
        findings().ifPresent(d -> DetectionText.json(d, root));
    }
}
