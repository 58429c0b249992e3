package slipway.web.episode.followup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import slipway.care.record.chart.Chart;
import slipway.reasoning.response.propose.VisitProposal;
import slipway.web.episode.followup.NextDoseForm.Mistake;
import slipway.web.episode.home.HomeCourse;
import slipway.web.episode.home.HomeCourse.Home;
import slipway.web.episode.plan.SetDoses;

/** The proposed next doses of a chart, with what was decided on them. */
@Component
class NextDoses {
    private final HomeCourse course;

    NextDoses(HomeCourse course) {
        this.course = course;
    }

    /** What was typed for one of the exercises and could not be taken. */
    record Typed(NextDoseForm form, List<Mistake> mistakes) {}

    List<NextDoseRow> rows(Chart chart, Home home, Optional<Typed> typed) {
        return course.proposals(chart, home).stream()
                .map(proposal -> row(chart, home, proposal, typed))
                .toList();
    }

    private static NextDoseRow row(Chart chart, Home home, VisitProposal proposal, Optional<Typed> typed) {
        List<SetDoses.Kept> decided = new ArrayList<>(SetDoses.list(chart, home.plan()).stream()
                .filter(kept -> kept.exercise().equals(proposal.exercise()))
                .toList());
        Collections.reverse(decided);
        Optional<Typed> own = typed.filter(each -> each.form().exercise().equals(proposal.exercise()));
        return new NextDoseRow(
                Answered.name(proposal.exercise()),
                proposal,
                decided,
                own.map(Typed::form),
                own.map(Typed::mistakes).orElse(List.of()));
    }
}
