package org.hearthrule.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthrule.checklist.LawGuide;
import org.hearthrule.checklist.LawInFull;
import org.hearthrule.checklist.LawList;
import org.hearthrule.checklist.LawRegister;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.Model.CommandSpec;

/** {@code law JURISDICTION} and {@code law --list}: a state's law in plain words. */
final class LawCommand implements Command {

    @Override
    public void describe(CommandSpec spec) {
        Options.optionalParameter(spec, 0, "JURISDICTION");
        Options.option(spec, "--pathway", "P");
        Options.flag(spec, "--all");
        Options.flag(spec, "--list");
        Options.option(spec, "--as-of", "DATE");
        Options.option(spec, "--format", "FORMAT");
        Options.option(spec, "--out", "FILE");
    }

    @Override
    public int run(Given given, Terminal terminal) throws BadInputException, IOException {
        boolean list = given.is("--list") || given.text("JURISDICTION") == null;
        Output output = Output.of(given, terminal, list ? List.of("text", "json", "markdown") : List.of("text"));
        LocalDate asOf = given.asOf(terminal);
        Profiles profiles = Laws.open(given);
        if (list) {
            List<Profile> all = all(profiles, given);
            given.throwIfErrors();
            if (output.format().equals("json")) {
                output.data(LawList.json(all));
            } else if (output.format().equals("markdown")) {
                output.data(LawRegister.markdown(all, Wording.english()));
            } else {
                output.sheet(LawList.sheet(all, Wording.english()));
            }
            return Exit.OK;
        }
        Optional<Profile> profile = Laws.find(profiles, given.text("JURISDICTION"), given);
        Optional<Pathway> pathway = profile.flatMap(law -> TypedBook.pathway(law, "--pathway", given));
        given.throwIfErrors();
        output.sheet(given.is("--all") ? LawInFull.of(profile.orElseThrow(), asOf, Wording.english())
                : LawGuide.of(profile.orElseThrow(), pathway.orElseThrow(), asOf, Wording.english()));
        terminal.warn(given.problems());
        return Exit.OK;
    }

    private static List<Profile> all(Profiles profiles, Given given) {
        List<Profile> all = new ArrayList<>();
        for (String code : profiles.codes()) {
            Laws.find(profiles, code, given).ifPresent(all::add);
        }
        return all;
    }
}
