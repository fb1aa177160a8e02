package dev.fairlead.web;

import dev.fairlead.intake.CaseWriter;
import dev.fairlead.measure.SampleCase;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;

final class Serve {
    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        Files.createDirectories(folder);
        if (!Files.exists(folder.resolve("sample.json"))) {
            Files.writeString(folder.resolve("sample.json"), CaseWriter.json(SampleCase.full().build()));
            Files.writeString(folder.resolve("hand.yaml"), "# from the practice\nfairlead: 1\nid: hand-1\nstage: indication # early\n");
            Files.writeString(folder.resolve("broken.json"), "{\"fairlead\": 1, \"id\": \"broken-1\", \"stage\": \"bench\", \"space\": {\"left\": 210}}");
        }
        WebServer s = WebServer.start(new Settings(folder, Integer.parseInt(args[1]), Checks.by(new dev.fairlead.check.Checker(dev.fairlead.rules.Rulebase.load(null))), java.util.Optional.empty(), () -> LocalDate.of(2026, 3, 1)));
        System.out.println(s.address());
    }
}
