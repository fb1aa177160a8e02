package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who answered, who changed what, and what stood there before. */
class SignatureTest {
    private static final String BASE = "/cases/sample.json";

    @TempDir
    Path folder;

    @Test
    void aSignatureNeedsRoleAndInitialsAndEndsWithTheAnswersItStoodFor() throws Exception {
        try (Pages pages = Pages.withSample(folder)) {
            String chair = BASE + "/chair?part=insertion&q=99";
            for (Map<String, String> half : java.util.List.of(
                    Map.of("role", "clinician", "initials", ""), Map.of("role", "", "initials", "AB"))) {
                Map<String, String> form = new java.util.HashMap<>(half);
                form.put("version", pages.version(chair));
                HttpResponse<String> r = pages.post(BASE + "/chair/sign?part=insertion", form);
                assertThat(r.statusCode()).isEqualTo(422);
                assertThat(r.body()).contains("Not signed");
            }
            pages.post(
                    BASE + "/chair/sign?part=insertion",
                    Map.of("version", pages.version(chair), "role", "clinician", "initials", "AB"));
            assertThat(pages.get(chair).body()).contains("Signed by clinician AB");
            pages.post(
                    BASE + "/chair?part=insertion&q=0",
                    Map.of("version", pages.version(chair), "/insertion/eyeProtection", "no"));
            assertThat(pages.get(chair).body())
                    .contains("no longer holds", "clinician")
                    .doesNotContain("Signed by clinician AB");
            assertThat(pages.file("sample.json")).doesNotContain("answeredBy").doesNotContain("initials");
            // a change of anything else leaves a signature alone
            pages.post(
                    BASE + "/chair/sign?part=insertion",
                    Map.of("version", pages.version(chair), "role", "resident", "initials", "cd"));
            pages.post(BASE + "/form/arch", Map.of("version", pages.version(chair), "/space/left", "20.1"));
            assertThat(pages.get(chair).body())
                    .contains("Signed by resident cd")
                    .doesNotContain("no longer holds");
        }
    }

    @Test
    void theLogTellsWhoChangedWhatAndAnEarlierVersionComesBackAsANewOne() throws Exception {
        try (Pages pages = Pages.withSample(folder)) {
            String first = pages.file("sample.json");
            pages.post("/who", Map.of("role", "resident", "initials", "qx", "back", "/cases"));
            String arch = BASE + "/form/arch";
            pages.post(arch + "?changed=/space/left", Map.of("version", pages.version(arch), "/space/left", "19.9"));
            pages.post(arch + "?changed=/space/left", Map.of("version", pages.version(arch), "/space/left", "18.8"));
            String list = pages.get(BASE + "/versions").body();
            assertThat(list).contains("resident QX", "19.9", "18.8", "20.4; 20.6");
            java.util.regex.Matcher m = java.util.regex.Pattern.compile(BASE + "/versions/([0-9a-f]{20})")
                    .matcher(list);
            String oldest = "";
            while (m.find()) {
                oldest = m.group();
            }
            assertThat(pages.get(oldest).body()).contains("1 value differs", "20.4; 20.6", "18.8");
            pages.post(oldest, Map.of("version", pages.version(oldest)));
            assertThat(pages.file("sample.json")).isEqualTo(first);
            assertThat(pages.get(BASE + "/versions").body()).contains("brought back an earlier version");
            pages.post(BASE + "/undo", Map.of("version", pages.version(arch)));
            assertThat(pages.file("sample.json")).contains("18.8");
        }
    }
}
