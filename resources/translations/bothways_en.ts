<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_US">
<context>
    <name>CompanionRows</name>
    <message numerus="yes">
        <source>setting %1, %n pair(s)</source>
        <translation>
            <numerusform>setting %1, %n pair</numerusform>
            <numerusform>setting %1, %n pairs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ImportReport</name>
    <message numerus="yes">
        <source>%n column(s)</source>
        <translation>
            <numerusform>%n column</numerusform>
            <numerusform>%n columns</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) came in,</source>
        <translation>
            <numerusform>%n row came in,</numerusform>
            <numerusform>%n rows came in,</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 long, with %n channel(s).</source>
        <translation>
            <numerusform>%1 long, with %n channel.</numerusform>
            <numerusform>%1 long, with %n channels.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gap(s), the longest %1 s.</source>
        <translation>
            <numerusform>%n gap, the longest %1 s.</numerusform>
            <numerusform>%n gaps, the longest %1 s.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) without a readable time left out.</source>
        <translation>
            <numerusform>%n row without a readable time left out.</numerusform>
            <numerusform>%n rows without a readable time left out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) with the time of the row before left out.</source>
        <translation>
            <numerusform>%n row with the time of the row before left out.</numerusform>
            <numerusform>%n rows with the time of the row before left out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) that fell back in time left out.</source>
        <translation>
            <numerusform>%n row that fell back in time left out.</numerusform>
            <numerusform>%n rows that fell back in time left out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The clock was set %n time(s); what follows was joined on.</source>
        <translation>
            <numerusform>The clock was set %n time; what follows was joined on.</numerusform>
            <numerusform>The clock was set %n times; what follows was joined on.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The rate of rows changes %n time(s).</source>
        <translation>
            <numerusform>The rate of rows changes %n time.</numerusform>
            <numerusform>The rate of rows changes %n times.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) without a position.</source>
        <translation>
            <numerusform>%n time without a position.</numerusform>
            <numerusform>%n times without a position.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n track point(s) that are nowhere on Earth left out.</source>
        <translation>
            <numerusform>%n track point that is nowhere on Earth left out.</numerusform>
            <numerusform>%n track points that are nowhere on Earth left out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sentence(s) with a wrong checksum left out.</source>
        <translation>
            <numerusform>%n sentence with a wrong checksum left out.</numerusform>
            <numerusform>%n sentences with a wrong checksum left out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n empty cell(s).</source>
        <translation>
            <numerusform>%n empty cell.</numerusform>
            <numerusform>%n empty cells.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cell(s) that are no number, taken as empty.</source>
        <translation>
            <numerusform>%n cell that is no number, taken as empty.</numerusform>
            <numerusform>%n cells that are no number, taken as empty.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) with too few cells.</source>
        <translation>
            <numerusform>%n row with too few cells.</numerusform>
            <numerusform>%n rows with too few cells.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) with too many cells.</source>
        <translation>
            <numerusform>%n row with too many cells.</numerusform>
            <numerusform>%n rows with too many cells.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WhyText</name>
    <message numerus="yes">
        <source>%n run(s) were driven. Each is one pass over the stretch in one direction.</source>
        <translation>
            <numerusform>%n run was driven. Each is one pass over the stretch in one direction.</numerusform>
            <numerusform>%n runs were driven. Each is one pass over the stretch in one direction.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them do(es) not count, for a reason that was written down:</source>
        <translation>
            <numerusform>%n of them does not count, for a reason that was written down:</numerusform>
            <numerusform>%n of them do not count, for a reason that was written down:</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>With %n pair(s) none of these checks has much power: passing them proves little.</source>
        <translation>
            <numerusform>With %n pair none of these checks has much power: passing them proves little.</numerusform>
            <numerusform>With %n pairs none of these checks has much power: passing them proves little.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With %n pair(s) these checks see gross faults only.</source>
        <translation>
            <numerusform>With %n pair these checks see gross faults only.</numerusform>
            <numerusform>With %n pairs these checks see gross faults only.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; among %n pair(s) that is ordinary (%2).</source>
        <extracomment>%1 the clause &quot;Pair … lies farthest …&quot;</extracomment>
        <translation>
            <numerusform>%1; among %n pair that is ordinary (%2).</numerusform>
            <numerusform>%1; among %n pairs that is ordinary (%2).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Without any one of the %n pair(s) the effect stays between %1; the verdict does not stay.</source>
        <translation>
            <numerusform>Without any one of the %n pair the effect stays between %1; the verdict does not stay.</numerusform>
            <numerusform>Without any one of the %n pairs the effect stays between %1; the verdict does not stay.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Without any one of the %n pair(s) the effect stays between %1; the verdict stays, too.</source>
        <translation>
            <numerusform>Without any one of the %n pair the effect stays between %1; the verdict stays, too.</numerusform>
            <numerusform>Without any one of the %n pairs the effect stays between %1; the verdict stays, too.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) discarded; none can be put back.</source>
        <translation>
            <numerusform>%n run discarded; it cannot be put back.</numerusform>
            <numerusform>%n runs discarded; none can be put back.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>They could have shown %1&#xa0;% or more; %n more pair(s) a block would show %2&#xa0;%.</source>
        <translation>
            <numerusform>They could have shown %1&#xa0;% or more; %n more pair a block would show %2&#xa0;%.</numerusform>
            <numerusform>They could have shown %1&#xa0;% or more; %n more pairs a block would show %2&#xa0;%.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No verdict: effect and drift use up all %n pair(s), and nothing is left to judge the noise by. Drive one pair more.</source>
        <translation>
            <numerusform>No verdict: effect and drift use up all %n pair, and nothing is left to judge the noise by. Drive one pair more.</numerusform>
            <numerusform>No verdict: effect and drift use up all %n pairs, and nothing is left to judge the noise by. Drive one pair more.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n counted run(s) have no partner within %1 minutes.</source>
        <translation>
            <numerusform>%n counted run has no partner within %1 minutes.</numerusform>
            <numerusform>%n counted runs have no partner within %1 minutes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Sensitive: leaving out a single pair changes the verdict for %1 of the %n pair(s).</source>
        <translation>
            <numerusform>Sensitive: leaving out a single pair changes the verdict for %1 of the %n pair.</numerusform>
            <numerusform>Sensitive: leaving out a single pair changes the verdict for %1 of the %n pairs.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s)</source>
        <translation>
            <numerusform>%n pair</numerusform>
            <numerusform>%n pairs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n block(s)</source>
        <translation>
            <numerusform>%n block</numerusform>
            <numerusform>%n blocks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n counted run(s)</source>
        <translation>
            <numerusform>%n counted run</numerusform>
            <numerusform>%n counted runs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 from %2 in %3; %n discarded.</source>
        <translation>
            <numerusform>%1 from %2 in %3; %n discarded.</numerusform>
            <numerusform>%1 from %2 in %3; %n discarded.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::ChecksPage</name>
    <message numerus="yes">
        <source>%n check(s) fail: read them before you trust the interval.</source>
        <translation>
            <numerusform>%n check fails: read it before you trust the interval.</numerusform>
            <numerusform>%n checks fail: read them before you trust the interval.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No check fails; %n of them deserve(s) a look.</source>
        <translation>
            <numerusform>No check fails; %n of them deserves a look.</numerusform>
            <numerusform>No check fails; %n of them deserve a look.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::ComparePage</name>
    <message numerus="yes">
        <source>This is honest only where the studies ask the same question of the same device, and where none was left out for its answer. Between the studies the effect varies by %1&#xa0;% (standard deviation); %2&#xa0;% of what separates them is more than their own noise. The studies count as a sample of all such days: random effects, DerSimonian–Laird, with the Hartung–Knapp interval on %n degree(s) of freedom.</source>
        <translation>
            <numerusform>This is honest only where the studies ask the same question of the same device, and where none was left out for its answer. Between the studies the effect varies by %1&#xa0;% (standard deviation); %2&#xa0;% of what separates them is more than their own noise. The studies count as a sample of all such days: random effects, DerSimonian–Laird, with the Hartung–Knapp interval on %n degree of freedom.</numerusform>
            <numerusform>This is honest only where the studies ask the same question of the same device, and where none was left out for its answer. Between the studies the effect varies by %1&#xa0;% (standard deviation); %2&#xa0;% of what separates them is more than their own noise. The studies count as a sample of all such days: random effects, DerSimonian–Laird, with the Hartung–Knapp interval on %n degrees of freedom.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::CutDialog</name>
    <message numerus="yes">
        <source>the run sheet&apos;s times: %n part(s)</source>
        <translation>
            <numerusform>the run sheet&apos;s times: %n part</numerusform>
            <numerusform>the run sheet&apos;s times: %n parts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>marks: %n part(s)</source>
        <translation>
            <numerusform>marks: %n part</numerusform>
            <numerusform>marks: %n parts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>positions: %n part(s)</source>
        <translation>
            <numerusform>positions: %n part</numerusform>
            <numerusform>positions: %n parts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>a held speed: %n part(s)</source>
        <translation>
            <numerusform>a held speed: %n part</numerusform>
            <numerusform>a held speed: %n parts</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::FindingsPanel</name>
    <message numerus="yes">
        <source>%n rule(s) not checked on some or all runs, which is not the same as passed…</source>
        <translation>
            <numerusform>%n rule not checked on some or all runs, which is not the same as passed…</numerusform>
            <numerusform>%n rules not checked on some or all runs, which is not the same as passed…</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::HelpWindow</name>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation>
            <numerusform>%n place</numerusform>
            <numerusform>%n places</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::ImportProblemsDialog</name>
    <message numerus="yes">
        <source>%1 was not imported, and the study is as it was. %n place(s) in it need a look:</source>
        <translation>
            <numerusform>%1 was not imported, and the study is as it was. %n place in it needs a look:</numerusform>
            <numerusform>%1 was not imported, and the study is as it was. %n places in it need a look:</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::MainWindow</name>
    <message numerus="yes">
        <source>There are %n more.</source>
        <translation>
            <numerusform>There is %n more.</numerusform>
            <numerusform>There are %n more.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n run</numerusform>
            <numerusform>%n runs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n counted</source>
        <translation>
            <numerusform>%n counted</numerusform>
            <numerusform>%n counted</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s)</source>
        <translation>
            <numerusform>%n pair</numerusform>
            <numerusform>%n pairs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) came from %1.</source>
        <translation>
            <numerusform>%n run came from %1.</numerusform>
            <numerusform>%n runs came from %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n part(s) of the recording became runs.</source>
        <translation>
            <numerusform>%n part of the recording became a run.</numerusform>
            <numerusform>%n parts of the recording became runs.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::PlanPage</name>
    <message numerus="yes">
        <source>Pooled from %1 (%n degree(s) of freedom).</source>
        <translation>
            <numerusform>Pooled from %1 (%n degree of freedom).</numerusform>
            <numerusform>Pooled from %1 (%n degrees of freedom).</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RunRowWords</name>
    <message numerus="yes">
        <source>%n pair(s)</source>
        <translation>
            <numerusform>%n pair</numerusform>
            <numerusform>%n pairs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n discarded</source>
        <translation>
            <numerusform>%n discarded</numerusform>
            <numerusform>%n discarded</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::StudyPage</name>
    <message numerus="yes">
        <source>%n run(s) removed. Undo brings them back; a run that was driven is better discarded with its reason.</source>
        <translation>
            <numerusform>%n run removed. Undo brings it back; a run that was driven is better discarded with its reason.</numerusform>
            <numerusform>%n runs removed. Undo brings them back; a run that was driven is better discarded with its reason.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::TraceView</name>
    <message numerus="yes">
        <source>Recording of run %1 with %n finding(s).</source>
        <translation>
            <numerusform>Recording of run %1 with %n finding.</numerusform>
            <numerusform>Recording of run %1 with %n findings.</numerusform>
        </translation>
    </message>
</context>
</TS>
