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
    <name>RecordingsFolder</name>
    <message numerus="yes">
        <source>%n recording(s) that %1 names are not there.</source>
        <translation>
            <numerusform>%n recording that %1 names is not there.</numerusform>
            <numerusform>%n recordings that %1 names are not there.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n recording(s) are not in %1 either.</source>
        <translation>
            <numerusform>%n recording is not in %1 either.</numerusform>
            <numerusform>%n recordings are not in %1 either.</numerusform>
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
    <name>bothways::app::AlarmBand</name>
    <message numerus="yes">
        <source>%1 (%n more)</source>
        <translation>
            <numerusform>%1 (%n more)</numerusform>
            <numerusform>%1 (%n more)</numerusform>
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
    <name>bothways::app::CompareDialog</name>
    <message numerus="yes">
        <source>Reading %n study(s)…</source>
        <translation>
            <numerusform>Reading %n study…</numerusform>
            <numerusform>Reading %n studies…</numerusform>
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
        <source>%n rule(s) not checked on every run…</source>
        <translation>
            <numerusform>%n rule not checked on every run…</numerusform>
            <numerusform>%n rules not checked on every run…</numerusform>
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
        <source>%n finding(s) are not answered yet. Once the result is known, it can no longer be ruled out that it chose the runs.</source>
        <translation>
            <numerusform>%n finding is not answered yet. Once the result is known, it can no longer be ruled out that it chose the runs.</numerusform>
            <numerusform>%n findings are not answered yet. Once the result is known, it can no longer be ruled out that it chose the runs.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The recording %1 and %n more had not been stopped. All of them up to their last seconds are in the study.</source>
        <translation>
            <numerusform>The recording %1 and %n more had not been stopped. Both up to their last seconds are in the study.</numerusform>
            <numerusform>The recording %1 and %n more had not been stopped. All of them up to their last seconds are in the study.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::MessageBar</name>
    <message numerus="yes">
        <source>There are %n more.</source>
        <translation>
            <numerusform>There is %n more.</numerusform>
            <numerusform>There are %n more.</numerusform>
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
    <name>bothways::app::RecordingsDesk</name>
    <message numerus="yes">
        <source>%n part(s) of the recording became runs.</source>
        <translation>
            <numerusform>%n part of the recording became a run.</numerusform>
            <numerusform>%n parts of the recording became runs.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::ReportDesk</name>
    <message numerus="yes">
        <source>Reading %n study(s)…</source>
        <translation>
            <numerusform>Reading %n study…</numerusform>
            <numerusform>Reading %n studies…</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::ResultPage</name>
    <message numerus="yes">
        <source>%n more…</source>
        <translation>
            <numerusform>%n more…</numerusform>
            <numerusform>%n more…</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::RigTrial</name>
    <message numerus="yes">
        <source>, %n line(s) could not be read</source>
        <translation>
            <numerusform>, %n line could not be read</numerusform>
            <numerusform>, %n lines could not be read</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::RunForm</name>
    <message numerus="yes">
        <source>%n runs: %1</source>
        <translation>
            <numerusform>%n run: %1</numerusform>
            <numerusform>%n runs: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::StudyJobs</name>
    <message numerus="yes">
        <source>%n run(s) came from %1.</source>
        <translation>
            <numerusform>%n run came from %1.</numerusform>
            <numerusform>%n runs came from %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) of the sheet were there already and are in the study twice now; Undo takes the import back.</source>
        <translation>
            <numerusform>%n run of the sheet was there already and is in the study twice now; Undo takes the import back.</numerusform>
            <numerusform>%n runs of the sheet were there already and are in the study twice now; Undo takes the import back.</numerusform>
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
<context>
    <name>bothways::app::WidthsPlot</name>
    <message numerus="yes">
        <source>%1, %n pair(s) a block</source>
        <translation>
            <numerusform>%1, %n pair a block</numerusform>
            <numerusform>%1, %n pairs a block</numerusform>
        </translation>
    </message>
</context>
</TS>
