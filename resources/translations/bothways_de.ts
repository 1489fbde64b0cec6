<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>CheckPlots</name>
    <message>
        <source>pair %1 (%2), runs %3 and %4
%5</source>
        <translation>Paar %1 (%2), Fahrten %3 und %4
%5</translation>
    </message>
    <message>
        <source>time of day</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>residual %1</source>
        <translation>Residuum %1</translation>
    </message>
    <message>
        <source>residual, %</source>
        <translation>Residuum, %</translation>
    </message>
    <message>
        <source>expected of ordinary scatter, in standard deviations</source>
        <translation>bei gewöhnlicher Streuung erwartet (Std.-Abw.)</translation>
    </message>
    <message>
        <source>Residuals against ordinary scatter</source>
        <translation>Residuen gegen gewöhnliche Streuung</translation>
    </message>
    <message>
        <source>Residuals over time</source>
        <translation>Residuen über der Zeit</translation>
    </message>
    <message>
        <source>configuration</source>
        <translation>Konfiguration</translation>
    </message>
    <message>
        <source>Scatter of both configurations</source>
        <translation>Streuung beider Konfigurationen</translation>
    </message>
    <message>
        <source>against the first block: %1</source>
        <translation>gegen den ersten Block: %1</translation>
    </message>
    <message>
        <source>against its first block, %</source>
        <translation>gegen den ersten Block, %</translation>
    </message>
    <message>
        <source>The baseline over the day</source>
        <translation>Die Referenz im Lauf des Tages</translation>
    </message>
    <message>
        <source>out against return: %1</source>
        <translation>hin gegen zurück: %1</translation>
    </message>
    <message>
        <source>out against return, %</source>
        <translation>hin gegen zurück, %</translation>
    </message>
    <message>
        <source>Out against return over time</source>
        <translation>Hin gegen zurück über der Zeit</translation>
    </message>
    <message>
        <source>There are no pairs yet.</source>
        <translation>Es gibt noch keine Paare.</translation>
    </message>
</context>
<context>
    <name>CommonNotes</name>
    <message>
        <source>, </source>
        <comment>between notes</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>In every run: %1.</source>
        <translation>In jeder Fahrt: %1.</translation>
    </message>
    <message>
        <source>In every run that says nothing else: %1.</source>
        <translation>In jeder Fahrt, bei der nichts anderes steht: %1.</translation>
    </message>
    <message>
        <source>not noted: %1</source>
        <translation>nicht notiert: %1</translation>
    </message>
</context>
<context>
    <name>CompanionRows</name>
    <message>
        <source>%1 (%2)</source>
        <extracomment>an effect and its interval</extracomment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>headline</source>
        <translation>Hauptergebnis</translation>
    </message>
    <message numerus="yes">
        <source>setting %1, %n pair(s)</source>
        <translation>
            <numerusform>Einstellung %1, %n Paar</numerusform>
            <numerusform>Einstellung %1, %n Paare</numerusform>
        </translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>not to be had</source>
        <translation>nicht zu gewinnen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>a companion&apos;s name, and its numbers</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>thin line: corrected for several settings, %1</source>
        <translation>dünne Linie: für mehrere Einstellungen korrigiert, %1</translation>
    </message>
    <message>
        <source>as judged</source>
        <translation>wie beurteilt</translation>
    </message>
    <message>
        <source>all put back</source>
        <translation>alle wieder gewertet</translation>
    </message>
    <message>
        <source>run %1 put back</source>
        <translation>Fahrt %1 wieder gewertet</translation>
    </message>
    <message>
        <source>has no consumption</source>
        <translation>hat keinen Verbrauch</translation>
    </message>
    <message>
        <source>discarded: %1</source>
        <translation>verworfen: %1</translation>
    </message>
    <message>
        <source>day %1</source>
        <translation>Tag %1</translation>
    </message>
    <message>
        <source>change of consumption with %1, in per cent (%2 intervals; shaded: within the margin)</source>
        <translation>Verbrauchsänderung mit %1, in Prozent (%2-Intervalle; schattiert: Relevanzschwelle)</translation>
    </message>
</context>
<context>
    <name>DayPicture</name>
    <message>
        <source>pair %1, %2, %3
runs %4 and %5: %6</source>
        <translation>Paar %1, %2, %3
Fahrten %4 und %5: %6</translation>
    </message>
    <message>
        <source>its runs have different settings</source>
        <translation>seine Fahrten haben verschiedene Einstellungen</translation>
    </message>
    <message>
        <source>tied by hand</source>
        <translation>von Hand gebildet</translation>
    </message>
    <message>
        <source>%1&#xa0;% of the control vehicle&apos;s</source>
        <translation>%1&#xa0;% des Kontrollfahrzeugs</translation>
    </message>
    <message>
        <source>no consumption</source>
        <translation>kein Verbrauch</translation>
    </message>
    <message>
        <source>run %1, %2, %3, %4
%5</source>
        <translation>Fahrt %1, %2, %3, %4
%5</translation>
    </message>
    <message>
        <source>counted, but without a partner</source>
        <translation>gewertet, aber ohne Partner</translation>
    </message>
    <message>
        <source>discarded: %1</source>
        <translation>verworfen: %1</translation>
    </message>
    <message>
        <source>discarded: %1
%2</source>
        <translation>verworfen: %1
%2</translation>
    </message>
</context>
<context>
    <name>Evidence</name>
    <message>
        <source>%1, at %2 s</source>
        <extracomment>a clip, and the moment in it</extracomment>
        <translation>%1, bei %2 s</translation>
    </message>
    <message>
        <source>The evidence is not there: %1. Its name, size and SHA-256 are in the study.</source>
        <translation>Der Beleg ist nicht da: %1. Name, Größe und SHA-256 stehen in der Studie.</translation>
    </message>
    <message>
        <source>No program was found that opens %1.</source>
        <translation>Es wurde kein Programm gefunden, das %1 öffnet.</translation>
    </message>
</context>
<context>
    <name>Handbook</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>What this means (handbook)</source>
        <translation>Was das bedeutet (Handbuch)</translation>
    </message>
    <message>
        <source>Handbook: %1</source>
        <translation>Handbuch: %1</translation>
    </message>
</context>
<context>
    <name>LiveWords</name>
    <message>
        <source>%1 driven</source>
        <translation>%1 gefahren</translation>
    </message>
    <message>
        <source>%1 to go</source>
        <translation>noch %1</translation>
    </message>
    <message>
        <source>%1 over the stretch</source>
        <translation>%1 über die Strecke hinaus</translation>
    </message>
    <message>
        <source>recording %1, %2</source>
        <translation>Aufzeichnung %1, %2</translation>
    </message>
</context>
<context>
    <name>NumberWords</name>
    <message>
        <source>%1 to %2&#xa0;%</source>
        <extracomment>an interval in a table, both ends with their sign</extracomment>
        <translation>%1 bis %2&#xa0;%</translation>
    </message>
    <message>
        <source>&lt; %1</source>
        <translation>&lt; %1</translation>
    </message>
</context>
<context>
    <name>Program</name>
    <message>
        <source>nothing to paint</source>
        <translation>nichts zu malen</translation>
    </message>
    <message>
        <source>--theme: expected system, light or dark</source>
        <translation>--theme: erwartet wird system, light oder dark</translation>
    </message>
    <message>
        <source>--page: expected one of %1</source>
        <translation>--page: erwartet wird eines von %1</translation>
    </message>
    <message>
        <source>--size: expected WIDTHxHEIGHT, such as 1280x800</source>
        <translation>--size: erwartet wird BREITExHÖHE, zum Beispiel 1280x800</translation>
    </message>
    <message>
        <source>%1: cannot be opened</source>
        <translation>%1: kann nicht geöffnet werden</translation>
    </message>
    <message>
        <source>%1: the picture cannot be written: %2</source>
        <translation>%1: Das Bild kann nicht geschrieben werden: %2</translation>
    </message>
    <message>
        <source>--size: of a thumbnail expected a number from %1 to %2</source>
        <translation>--size: für ein Vorschaubild wird eine Zahl von %1 bis %2 erwartet</translation>
    </message>
</context>
<context>
    <name>QPlatformTheme</name>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>QShortcut</name>
    <message>
        <source>Alt</source>
        <translation>Alt</translation>
    </message>
    <message>
        <source>Ctrl</source>
        <translation>Strg</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Ins</source>
        <translation>Einfg</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Umschalt</translation>
    </message>
</context>
<context>
    <name>Questions</name>
    <message>
        <source>Did you mean %1?</source>
        <translation>War %1 gemeint?</translation>
    </message>
    <message>
        <source>In %1 it would fit.</source>
        <translation>In %1 würde es passen.</translation>
    </message>
    <message>
        <source>%1 % more fuel than the runs like it (%2).</source>
        <translation>%1&#xa0;% mehr Kraftstoff als bei den vergleichbaren Fahrten (%2).</translation>
    </message>
    <message>
        <source>%1 % more fuel than the other runs (%2).</source>
        <translation>%1&#xa0;% mehr Kraftstoff als bei den anderen Fahrten (%2).</translation>
    </message>
    <message>
        <source>%1 % less fuel than the runs like it (%2).</source>
        <translation>%1&#xa0;% weniger Kraftstoff als bei den vergleichbaren Fahrten (%2).</translation>
    </message>
    <message>
        <source>%1 % less fuel than the other runs (%2).</source>
        <translation>%1&#xa0;% weniger Kraftstoff als bei den anderen Fahrten (%2).</translation>
    </message>
    <message>
        <source>This start is before that of run %1; the run will be sorted in there.</source>
        <translation>Dieser Start liegt vor dem von Fahrt %1; die Fahrt wird dort einsortiert.</translation>
    </message>
    <message>
        <source>More than 6 hours after run %1: a new day begins.</source>
        <translation>Mehr als 6 Stunden nach Fahrt %1: Ein neuer Tag beginnt.</translation>
    </message>
    <message>
        <source>Run %1 was still being driven then.</source>
        <translation>Fahrt %1 war da noch unterwegs.</translation>
    </message>
    <message>
        <source>Run %1 went the same way. Is the run between them missing?</source>
        <translation>Fahrt %1 ging in dieselbe Richtung. Fehlt die Fahrt dazwischen?</translation>
    </message>
    <message>
        <source>The other runs are %1 long.</source>
        <translation>Die anderen Fahrten sind %1 lang.</translation>
    </message>
    <message>
        <source>Distance and duration make %1.</source>
        <translation>Aus Strecke und Dauer folgen %1.</translation>
    </message>
    <message>
        <source>Run %1 had %2.</source>
        <translation>Bei Fahrt %1 waren es %2.</translation>
    </message>
    <message>
        <source>%1 % more fuel than run %3 (%2).</source>
        <translation>%1&#xa0;% mehr Kraftstoff als Fahrt %3 (%2).</translation>
    </message>
    <message>
        <source>%1 % less fuel than run %3 (%2).</source>
        <translation>%1&#xa0;% weniger Kraftstoff als Fahrt %3 (%2).</translation>
    </message>
    <message>
        <source>No road vehicle uses that much.</source>
        <translation>So viel verbraucht kein Straßenfahrzeug.</translation>
    </message>
    <message>
        <source>No road vehicle uses so little.</source>
        <translation>So wenig verbraucht kein Straßenfahrzeug.</translation>
    </message>
    <message>
        <source>Far from the other runs: is it the right number, in the right unit?</source>
        <translation>Weit weg von den anderen Fahrten: Ist es die richtige Zahl, in der richtigen Einheit?</translation>
    </message>
</context>
<context>
    <name>Recorded</name>
    <message>
        <source>recording %1 %2</source>
        <translation>Aufzeichnung %1 %2</translation>
    </message>
    <message>
        <source>dashboard %1, recording %2 %3 (%4 %)</source>
        <translation>Anzeige %1, Aufzeichnung %2 %3 (%4&#xa0;%)</translation>
    </message>
</context>
<context>
    <name>RecordingsFolder</name>
    <message numerus="yes">
        <source>%n recording(s) that %1 names are not there.</source>
        <translation>
            <numerusform>%n Aufzeichnung, die in %1 steht, ist nicht da.</numerusform>
            <numerusform>%n Aufzeichnungen, die in %1 stehen, sind nicht da.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n recording(s) are not in %1 either.</source>
        <translation>
            <numerusform>%n Aufzeichnung ist auch in %1 nicht.</numerusform>
            <numerusform>%n Aufzeichnungen sind auch in %1 nicht.</numerusform>
        </translation>
    </message>
    <message>
        <source>Where are the recordings?</source>
        <translation>Wo sind die Aufzeichnungen?</translation>
    </message>
    <message>
        <source>&amp;Choose their folder…</source>
        <translation>Ihren Ordner &amp;wählen…</translation>
    </message>
    <message>
        <source>Folder of the recordings</source>
        <translation>Ordner der Aufzeichnungen</translation>
    </message>
</context>
<context>
    <name>ResultPage</name>
    <message>
        <source>none</source>
        <comment>no claim</comment>
        <translation>keine</translation>
    </message>
</context>
<context>
    <name>RoadsideSession</name>
    <message>
        <source>A run is under way already.</source>
        <translation>Es ist schon eine Fahrt unterwegs.</translation>
    </message>
    <message>
        <source>The study is closed.</source>
        <translation>Die Studie ist geschlossen.</translation>
    </message>
    <message>
        <source>Pressed twice? Press Start once more to begin the next run.</source>
        <translation>Doppelt gedrückt? Drücken Sie noch einmal „Start“, um die nächste Fahrt zu beginnen.</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Marks belong into a run, and none is under way.</source>
        <translation>Marken gehören in eine Fahrt, und keine ist unterwegs.</translation>
    </message>
    <message>
        <source>The run has only just begun.</source>
        <translation>Die Fahrt hat gerade erst begonnen.</translation>
    </message>
    <message>
        <source>mark “%1”</source>
        <translation>Marke „%1“</translation>
    </message>
    <message>
        <source>There is no mark to describe.</source>
        <translation>Es gibt keine Marke zu beschreiben.</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>No run is waiting for its number.</source>
        <translation>Keine Fahrt wartet auf ihre Zahl.</translation>
    </message>
    <message>
        <source>This study is in %1.</source>
        <translation>Diese Studie rechnet in %1.</translation>
    </message>
    <message>
        <source>The study is closed. The run is kept until it is open again.</source>
        <translation>Die Studie ist geschlossen. Die Fahrt wird aufbewahrt, bis sie wieder offen ist.</translation>
    </message>
    <message>
        <source>Type the consumption first, as the dashboard shows it.</source>
        <translation>Geben Sie zuerst den Verbrauch ein, wie ihn die Anzeige im Fahrzeug zeigt.</translation>
    </message>
    <message>
        <source>A consumption of 0 cannot be.</source>
        <translation>Ein Verbrauch von 0 ist nicht möglich.</translation>
    </message>
    <message>
        <source>An amount of fuel needs a distance, and the study has no length of the stretch. Choose another unit, or set the stretch.</source>
        <translation>Eine Kraftstoffmenge braucht eine Strecke, und die Studie kennt keine Länge der Messstrecke. Wählen Sie eine andere Einheit, oder legen Sie die Messstrecke fest.</translation>
    </message>
    <message>
        <source>The run took %1; about %2 was expected.</source>
        <translation>Die Fahrt dauerte %1; erwartet wurden etwa %2.</translation>
    </message>
    <message>
        <source>run %1 written</source>
        <translation>Fahrt %1 eingetragen</translation>
    </message>
    <message>
        <source>This reason needs words.</source>
        <translation>Dieser Grund braucht Worte.</translation>
    </message>
    <message>
        <source>run %1 discarded</source>
        <translation>Fahrt %1 verworfen</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Es gibt nichts rückgängig zu machen.</translation>
    </message>
    <message>
        <source>The study was changed since. Undo it in the run list.</source>
        <translation>Die Studie wurde inzwischen geändert. Machen Sie es in der Fahrtenliste rückgängig.</translation>
    </message>
    <message>
        <source>%1 on</source>
        <translation>%1 an</translation>
    </message>
    <message>
        <source>%1 off</source>
        <translation>%1 aus</translation>
    </message>
    <message>
        <source>The study has no such accessory.</source>
        <translation>Die Studie kennt diesen Nebenverbraucher nicht.</translation>
    </message>
    <message>
        <source>There is no other number to take.</source>
        <translation>Es gibt keine andere Zahl, die gemeint sein könnte.</translation>
    </message>
    <message>
        <source>The next run has begun. Type the number of run %1; it waits.</source>
        <translation>Die nächste Fahrt hat begonnen. Geben Sie die Zahl der Fahrt %1 ein; sie wartet.</translation>
    </message>
    <message>
        <source>A run was driven while the number of run %1 was awaited. It is in the recording; cut it there afterwards.</source>
        <translation>Eine Fahrt wurde gefahren, während die Zahl der Fahrt %1 erwartet wurde. Sie ist in der Aufzeichnung; schneiden Sie sie dort hinterher aus.</translation>
    </message>
    <message>
        <source>Run %1 has ended by what is recorded.</source>
        <translation>Fahrt %1 hat durch das geendet, was aufgezeichnet wird.</translation>
    </message>
    <message>
        <source>Run %1 has begun by what is recorded.</source>
        <translation>Fahrt %1 hat durch das begonnen, was aufgezeichnet wird.</translation>
    </message>
</context>
<context>
    <name>RunDraft</name>
    <message>
        <source>out</source>
        <comment>a direction</comment>
        <translation>hin</translation>
    </message>
    <message>
        <source>return</source>
        <comment>a direction</comment>
        <translation>zurück</translation>
    </message>
</context>
<context>
    <name>RunFields</name>
    <message>
        <source>Expected a time such as 6:40 or 06:40:15, or a date and time such as 2026-05-09 06:40.</source>
        <translation>Erwartet wird eine Uhrzeit wie 6:40 oder 06:40:15 oder Datum und Uhrzeit wie 09.05.2026 06:40.</translation>
    </message>
    <message>
        <source>Expected a whole number from 1.</source>
        <translation>Erwartet wird eine ganze Zahl ab 1.</translation>
    </message>
    <message>
        <source>Expected a number above 0, such as 8.41.</source>
        <translation>Erwartet wird eine Zahl über 0, etwa 8,41.</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Configuration</source>
        <translation>Konfiguration</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>Battery at start</source>
        <translation>Batterie am Anfang</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Air pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>Wind from</source>
        <translation>Wind aus</translation>
    </message>
    <message>
        <source>Accessories on</source>
        <translation>Nebenverbraucher an</translation>
    </message>
    <message>
        <source>On since</source>
        <translation>An seit</translation>
    </message>
    <message>
        <source>Accessory load</source>
        <translation>Nebenverbraucherlast</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Marken</translation>
    </message>
    <message>
        <source>Consumption</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>Control vehicle</source>
        <translation>Kontrollfahrzeug</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Strecke</translation>
    </message>
    <message>
        <source>Duration</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>Output</source>
        <translation>Abgabeleistung</translation>
    </message>
    <message>
        <source>Highest rotor speed</source>
        <translation>Höchste Rotordrehzahl</translation>
    </message>
    <message>
        <source>Battery at end</source>
        <translation>Batterie am Ende</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>min:s</source>
        <translation>min:s</translation>
    </message>
    <message>
        <source>s from start</source>
        <translation>s ab Start</translation>
    </message>
    <message>
        <source>When the run began: 6:40, 0640, 06:40:15, or 2026-05-09 06:40.</source>
        <translation>Wann die Fahrt begann: 6:40, 0640, 06:40:15 oder 09.05.2026 06:40.</translation>
    </message>
    <message>
        <source>What was fitted: two names in a study, A and B for instance.</source>
        <translation>Was am Fahrzeug war: zwei Namen je Studie, etwa A und B.</translation>
    </message>
    <message>
        <source>What was varied on the device, the blade pitch for instance. May stay empty.</source>
        <translation>Was am Gerät verändert wurde, etwa die Blattstellung. Darf leer bleiben.</translation>
    </message>
    <message>
        <source>Which way: two names in a study.</source>
        <translation>In welche Richtung: zwei Namen je Studie.</translation>
    </message>
    <message>
        <source>Timed accessories and when they were switched on, in seconds from the run&apos;s start, before it with a minus: heated_windscreen −120.</source>
        <translation>Nebenverbraucher mit Zeitschaltung und wann sie eingeschaltet wurden, in Sekunden ab dem Start der Fahrt, davor mit Minus: heated_windscreen −120.</translation>
    </message>
    <message>
        <source>Seconds into the run and words, several with semicolons: 31 passing_traffic lorry; 80 gust. First words that mean something: passing_traffic, adjusted.</source>
        <translation>Sekunden ab dem Start der Fahrt und Wörter, mehrere mit Semikolon: 31 passing_traffic lorry; 80 gust. Erste Wörter mit Bedeutung: passing_traffic, adjusted.</translation>
    </message>
    <message>
        <source>Minutes and seconds, or seconds: 3:05 or 185.</source>
        <translation>Minuten und Sekunden oder Sekunden: 3:05 oder 185.</translation>
    </message>
    <message>
        <source>Consumption of a second vehicle driven in step, in the same unit.</source>
        <translation>Verbrauch eines zweiten Fahrzeugs, das im Gleichschritt mitfuhr, in derselben Einheit.</translation>
    </message>
    <message>
        <source>At the place, not reduced to sea level.</source>
        <translation>Am Ort, nicht auf Meereshöhe reduziert.</translation>
    </message>
    <message>
        <source>Where the wind comes from: 0 north, 90 east.</source>
        <translation>Woher der Wind kommt: 0 Norden, 90 Osten.</translation>
    </message>
    <message>
        <source>Expected seconds and words, such as 31 passing_traffic lorry; 80 gust.</source>
        <translation>Erwartet werden Sekunden und Wörter, etwa 31 passing_traffic lorry; 80 gust.</translation>
    </message>
    <message>
        <source>Expected a name and seconds, such as heated_windscreen −120.</source>
        <translation>Erwartet werden ein Name und Sekunden, etwa heated_windscreen −120.</translation>
    </message>
    <message>
        <source>Expected minutes and seconds, such as 3:05.</source>
        <translation>Erwartet werden Minuten und Sekunden, etwa 3:05.</translation>
    </message>
    <message>
        <source>Expected a number.</source>
        <translation>Erwartet wird eine Zahl.</translation>
    </message>
</context>
<context>
    <name>RunRowWords</name>
    <message>
        <source>device</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>baseline</source>
        <translation>Referenz</translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s)</source>
        <translation>
            <numerusform>%n Paar</numerusform>
            <numerusform>%n Paare</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n discarded</source>
        <translation>
            <numerusform>%n verworfen</numerusform>
            <numerusform>%n verworfen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RunTagWords</name>
    <message>
        <source>%1 switched on %2 s before the start</source>
        <translation>%1 %2&#xa0;s vor dem Start eingeschaltet</translation>
    </message>
    <message>
        <source>%1 switched on at %2 s</source>
        <translation>%1 bei %2&#xa0;s eingeschaltet</translation>
    </message>
    <message>
        <source>load %1 W</source>
        <translation>Last %1&#xa0;W</translation>
    </message>
    <message>
        <source>Accessory load %1 W</source>
        <translation>Nebenverbraucherlast %1&#xa0;W</translation>
    </message>
    <message>
        <source>Temperature %1</source>
        <translation>Temperatur %1</translation>
    </message>
    <message>
        <source>wind %1 from %2°</source>
        <translation>Wind %1 aus %2°</translation>
    </message>
    <message>
        <source>wind %1</source>
        <translation>Wind %1</translation>
    </message>
    <message>
        <source>at %1 s</source>
        <translation>bei %1&#xa0;s</translation>
    </message>
    <message>
        <source>traffic</source>
        <translation>Verkehr</translation>
    </message>
    <message>
        <source>adjusted</source>
        <translation>verstellt</translation>
    </message>
    <message>
        <source>battery %1 V</source>
        <translation>Batterie %1&#xa0;V</translation>
    </message>
    <message>
        <source>Battery at the end against the start: %1 V</source>
        <translation>Batterie am Ende gegen den Anfang: %1&#xa0;V</translation>
    </message>
    <message>
        <source>Accessories on: %1</source>
        <translation>Nebenverbraucher an: %1</translation>
    </message>
    <message>
        <source>%1 on only at %2 s</source>
        <translation>%1 erst bei %2 s an</translation>
    </message>
    <message>
        <source>%1 on</source>
        <translation>%1 an</translation>
    </message>
    <message>
        <source>%1 on %2 min before: too early for its %3 minutes</source>
        <extracomment>an accessory, when it was switched on, and after how many minutes it drops out</extracomment>
        <translation>%1 %2 min vorher an: zu früh für seine %3 Minuten</translation>
    </message>
</context>
<context>
    <name>SheetImport</name>
    <message>
        <source>Reading the recordings of %1 …</source>
        <translation>Die Aufzeichnungen von %1 werden gelesen …</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
</context>
<context>
    <name>StudyFiles</name>
    <message>
        <source>Study of %1</source>
        <extracomment>a study&apos;s name, with the day on which it was begun</extracomment>
        <translation>Studie vom %1</translation>
    </message>
</context>
<context>
    <name>TraceChannels</name>
    <message>
        <source>%1, %2</source>
        <extracomment>a channel&apos;s name and its unit</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>setting (pale: as set)</source>
        <translation>Einstellung (blass: Sollwert)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <extracomment>a channel&apos;s name and the part of the device that it is of</extracomment>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>UnitsShown</name>
    <message>
        <source>%1&#xa0;%</source>
        <extracomment>a per cent change with its sign; a no-break space before the sign</extracomment>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>%1&#xa0;%2</source>
        <extracomment>a number and its unit</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>mi</source>
        <translation>mi</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>mph</source>
        <translation>mph</translation>
    </message>
    <message>
        <source>km/h</source>
        <translation>km/h</translation>
    </message>
    <message>
        <source>m/s</source>
        <translation>m/s</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
</context>
<context>
    <name>WhyText</name>
    <message>
        <source>The answer</source>
        <translation>Die Antwort</translation>
    </message>
    <message>
        <source>1. Runs</source>
        <translation>1. Fahrten</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) were driven. Each is one pass over the stretch in one direction.</source>
        <translation>
            <numerusform>%n Fahrt wurde gefahren. Eine Fahrt ist ein Durchgang über die Messstrecke in einer Richtung.</numerusform>
            <numerusform>%n Fahrten wurden gefahren. Jede ist ein Durchgang über die Messstrecke in einer Richtung.</numerusform>
        </translation>
    </message>
    <message>
        <source>None was discarded.</source>
        <translation>Keine wurde verworfen.</translation>
    </message>
    <message numerus="yes">
        <source>%n of them do(es) not count, for a reason that was written down:</source>
        <translation>
            <numerusform>%n davon zählt nicht, aus einem Grund, der festgehalten wurde:</numerusform>
            <numerusform>%n davon zählen nicht, aus Gründen, die festgehalten wurden:</numerusform>
        </translation>
    </message>
    <message>
        <source>run</source>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>configuration</source>
        <translation>Konfiguration</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>evidence</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>2. Pairs</source>
        <translation>2. Paare</translation>
    </message>
    <message>
        <source>An out run and a return run of one block make a pair: what the wind and the slope take one way they give back the other way, nearly. A pair&apos;s consumption is its fuel over its distance, and m is the natural logarithm of it in L/100 km (kWh/100 km for electric drive), so that a difference of m is a ratio of consumption.</source>
        <translation>Eine Hinfahrt und eine Rückfahrt eines Blocks bilden ein Paar: Was Wind und Gefälle auf dem einen Weg nehmen, geben sie auf dem anderen nahezu zurück. Der Verbrauch eines Paars ist sein Kraftstoff je Strecke, und m ist dessen natürlicher Logarithmus in l/100&#xa0;km (kWh/100&#xa0;km bei Elektroantrieb); ein Unterschied in m ist also ein Verhältnis der Verbräuche.</translation>
    </message>
    <message>
        <source>Here m is the logarithm of the pair&apos;s consumption over that of the control vehicle, which drove in step.</source>
        <translation>Hier ist m der Logarithmus aus dem Verbrauch des Paars geteilt durch den des Kontrollfahrzeugs, das im Gleichschritt mitfuhr.</translation>
    </message>
    <message>
        <source>These runs make no pair.</source>
        <translation>Diese Fahrten bilden kein Paar.</translation>
    </message>
    <message>
        <source>pair</source>
        <translation>Paar</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>Fahrten</translation>
    </message>
    <message>
        <source>block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>with</source>
        <comment>a configuration</comment>
        <translation>mit</translation>
    </message>
    <message>
        <source>x</source>
        <translation>x</translation>
    </message>
    <message>
        <source>time, h</source>
        <translation>Zeit, h</translation>
    </message>
    <message>
        <source>out</source>
        <translation>hin</translation>
    </message>
    <message>
        <source>return</source>
        <translation>zurück</translation>
    </message>
    <message>
        <source>both ways</source>
        <translation>beide</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>residual</source>
        <translation>Residuum</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>two runs</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Consumption is in %1, time in hours since the first run&apos;s start; x is 1 with %2 and 0 with %3.</source>
        <translation>Verbrauch in %1, Zeit in Stunden seit dem Start der ersten Fahrt; x ist 1 mit %2 und 0 mit %3.</translation>
    </message>
    <message>
        <source>Counted runs without a partner within %1 minutes: %2.</source>
        <translation>Gewertete Fahrten ohne Partner innerhalb von %1 Minuten: %2.</translation>
    </message>
    <message>
        <source>3. Effect and drift</source>
        <translation>3. Effekt und Drift</translation>
    </message>
    <message>
        <source>The day drifts: engine, tyres and road grow warmer, the wind changes. Because the baseline was driven before and after, a straight drift can be told from the effect. Least squares finds the three numbers that leave the smallest sum of squared residuals:</source>
        <translation>Der Tag driftet: Motor, Reifen und Straße werden wärmer, der Wind ändert sich. Weil die Referenz vorher und nachher gefahren wurde, lässt sich eine geradlinige Drift vom Effekt trennen. Die Methode der kleinsten Quadrate findet die drei Zahlen mit der kleinsten Summe der quadrierten Residuen:</translation>
    </message>
    <message>
        <source>m = μ + δ·x + β·(t − %1 h)</source>
        <translation>m = μ + δ·x + β·(t − %1 h)</translation>
    </message>
    <message>
        <source>Each day has a level of its own and, where the baseline was driven before and after, a straight drift of its own; the effect δ is common to all days. Least squares finds the numbers that leave the smallest sum of squared residuals.</source>
        <translation>Jeder Tag hat sein eigenes Niveau und, wo die Referenz vorher und nachher gefahren wurde, seine eigene geradlinige Drift; der Effekt δ ist allen Tagen gemeinsam. Die Methode der kleinsten Quadrate findet die Zahlen mit der kleinsten Summe der quadrierten Residuen.</translation>
    </message>
    <message>
        <source>There was one switch only, so a drift cannot be told from the effect, and none is estimated. Least squares is then the difference of the two means:</source>
        <translation>Es gab nur einen Wechsel; eine Drift lässt sich deshalb nicht vom Effekt trennen, und es wird keine geschätzt. Die Methode der kleinsten Quadrate liefert dann den Unterschied der beiden Mittelwerte:</translation>
    </message>
    <message>
        <source>m = μ + δ·x</source>
        <translation>m = μ + δ·x</translation>
    </message>
    <message>
        <source>μ = %1: the baseline, %2 at the mean pair time.</source>
        <translation>μ = %1: die Referenz, %2 zur mittleren Zeit der Paare.</translation>
    </message>
    <message>
        <source>δ = %1: the effect. 100·(exp(δ) − 1) = %2.</source>
        <translation>δ = %1: der Effekt. 100·(exp(δ) − 1) = %2.</translation>
    </message>
    <message>
        <source>β = %1 an hour: the drift, %2 an hour.</source>
        <translation>β = %1 je Stunde: die Drift, %2 je Stunde.</translation>
    </message>
    <message>
        <source>4. Noise</source>
        <translation>4. Rauschen</translation>
    </message>
    <message>
        <source>What the model leaves over is the noise of a pair. With %1 pairs and %2 numbers found from them, %3 degrees of freedom are left to judge it by:</source>
        <translation>Was das Modell übrig lässt, ist das Rauschen eines Paars. Bei %1 Paaren und %2 daraus bestimmten Zahlen bleiben %3 Freiheitsgrade, um es zu beurteilen:</translation>
    </message>
    <message>
        <source>s = √(sum of squared residuals ÷ degrees of freedom) = √(%1 ÷ %2) = %3</source>
        <translation>s = √(Summe der quadrierten Residuen ÷ Freiheitsgrade) = √(%1 ÷ %2) = %3</translation>
    </message>
    <message>
        <source>One pair scatters by %1&#xa0;%.</source>
        <translation>Ein Paar streut um %1&#xa0;%.</translation>
    </message>
    <message>
        <source>standard error of δ = s·√v = %1 × %2 = %3</source>
        <translation>Standardfehler von δ = s·√v = %1 × %2 = %3</translation>
    </message>
    <message>
        <source>√v says how well this sequence of pairs can see an effect: it comes from their configurations and times alone.</source>
        <translation>√v sagt, wie gut diese Folge von Paaren einen Effekt sehen kann: Es hängt allein von ihren Konfigurationen und Zeiten ab.</translation>
    </message>
    <message>
        <source>5. Intervals</source>
        <translation>5. Intervalle</translation>
    </message>
    <message>
        <source>%1 interval: δ ± t·se = %2 ± %3 × %4 = %5 to %6, that is %7 to %8</source>
        <translation>%1-Intervall: δ ± t·se = %2 ± %3 × %4 = %5 bis %6, das sind %7 bis %8</translation>
    </message>
    <message>
        <source>t is the quantile of Student&apos;s distribution for %1 degrees of freedom, the price for not knowing the noise beforehand. The second interval is that of the two one-sided tests for “no difference as large as the margin” (Schuirmann 1987).</source>
        <translation>t ist das Quantil der Student-Verteilung bei %1 Freiheitsgraden, der Preis dafür, das Rauschen nicht im Voraus zu kennen. Das zweite Intervall gehört zu den zwei einseitigen Tests auf „kein Unterschied bis zur Relevanzschwelle“ (Schuirmann 1987).</translation>
    </message>
    <message>
        <source>t = δ ÷ se = %1, %2</source>
        <translation>t = δ ÷ se = %1, %2</translation>
    </message>
    <message>
        <source>6. Verdict</source>
        <translation>6. Urteil</translation>
    </message>
    <message>
        <source>The whole %1 interval lies below zero: %2 used less.</source>
        <translation>Das ganze %1-Intervall liegt unter null: %2 verbrauchte weniger.</translation>
    </message>
    <message>
        <source>The whole %1 interval lies above zero: %2 used more.</source>
        <translation>Das ganze %1-Intervall liegt über null: %2 verbrauchte mehr.</translation>
    </message>
    <message>
        <source>Zero lies inside the %1 interval, and the whole %2 interval lies inside the margin of ±%3&#xa0;%: no difference as large as that.</source>
        <translation>Die Null liegt im %1-Intervall, und das ganze %2-Intervall liegt innerhalb der Relevanzschwelle von ±%3&#xa0;%: kein so großer Unterschied.</translation>
    </message>
    <message>
        <source>Zero lies inside the %1 interval, and the %2 interval reaches beyond the margin of ±%3&#xa0;%: these runs cannot tell.</source>
        <translation>Die Null liegt im %1-Intervall, und das %2-Intervall reicht über die Relevanzschwelle von ±%3&#xa0;% hinaus: Diese Fahrten lassen keine Entscheidung zu.</translation>
    </message>
    <message>
        <source>7. Reservations</source>
        <translation>7. Vorbehalte</translation>
    </message>
    <message>
        <source>The verdict carries no reservation: the companions that these runs allow agree, no single pair decides it, and no check fails.</source>
        <translation>Das Urteil trägt keinen Vorbehalt: Die Gegenproben, die diese Fahrten erlauben, stimmen überein, kein einzelnes Paar gibt den Ausschlag, und keine Annahme ist verletzt.</translation>
    </message>
</context>
<context>
    <name>bothways::app::AboutBox</name>
    <message>
        <source>About Bothways</source>
        <translation>Über Bothways</translation>
    </message>
    <message>
        <source>Bothways %1</source>
        <translation>Bothways %1</translation>
    </message>
    <message>
        <source>Logs fuel-economy runs driven out and back, and says honestly whether there is an effect.

Copyright (C) 2026 The Bothways developers. Free software under the GNU General Public License, version 3 or later; it comes without any warranty. Not for certification.

Made with Qt %1, QCustomPlot, SQLite, SQLiteCpp, Boost, Eigen, fast_float, fmt and zstd.</source>
        <translation>Hält Verbrauchsfahrten fest, die hin und zurück gefahren werden, und sagt ehrlich, ob es einen Effekt gibt.

Copyright (C) 2026 The Bothways developers. Freie Software unter der GNU General Public License, Version 3 oder später; ohne jede Gewährleistung. Nicht für Zertifizierungen.

Erstellt mit Qt %1, QCustomPlot, SQLite, SQLiteCpp, Boost, Eigen, fast_float, fmt und zstd.</translation>
    </message>
</context>
<context>
    <name>bothways::app::AlarmBand</name>
    <message numerus="yes">
        <source>%1 (%n more)</source>
        <translation>
            <numerusform>%1 (%n weiterer)</numerusform>
            <numerusform>%1 (%n weitere)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::BigButton</name>
    <message>
        <source>Enter</source>
        <comment>the key</comment>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Esc</source>
        <comment>the key</comment>
        <translation>Esc</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Key: %1</source>
        <translation>Taste: %1</translation>
    </message>
</context>
<context>
    <name>bothways::app::BlindPage</name>
    <message>
        <source>Consumption and result are hidden, so that the answer cannot choose the runs. Go through the findings, discard what has to go, then show them. That they were hidden, and until when, is in the history.</source>
        <translation>Verbrauch und Ergebnis sind verborgen, damit die Antwort nicht die Fahrten aussucht. Gehen Sie die Befunde durch, verwerfen Sie, was weg muss, und zeigen Sie sie dann. Dass sie verborgen waren und bis wann, steht im Verlauf.</translation>
    </message>
    <message>
        <source>The discards are settled: show the result</source>
        <translation>Die Sichtung ist abgeschlossen: Ergebnis zeigen</translation>
    </message>
    <message>
        <source>This study is open for reading only.</source>
        <translation>Diese Studie ist nur zum Lesen geöffnet.</translation>
    </message>
</context>
<context>
    <name>bothways::app::CalibrationDialog</name>
    <message>
        <source>Calibrate %1</source>
        <translation>%1 abgleichen</translation>
    </message>
    <message>
        <source>Let the true meter and the instrument stand still at a low value, type what the meter shows, press Take. Then once more at a high value.</source>
        <translation>Das wahre Messgerät und das Instrument bei einem niedrigen Wert ruhen lassen, eintippen, was das Messgerät zeigt, „Nehmen“ drücken. Dann noch einmal bei einem hohen Wert.</translation>
    </message>
    <message>
        <source>The meter shows, &amp;first</source>
        <translation>Das Messgerät zeigt, &amp;erstens</translation>
    </message>
    <message>
        <source>The meter shows, &amp;second</source>
        <translation>Das Messgerät zeigt, &amp;zweitens</translation>
    </message>
    <message>
        <source>&amp;Take</source>
        <translation>&amp;Nehmen</translation>
    </message>
    <message>
        <source>T&amp;ake</source>
        <translation>Neh&amp;men</translation>
    </message>
    <message>
        <source>&amp;Use it</source>
        <translation>&amp;Verwenden</translation>
    </message>
    <message>
        <source>The instrument reads %1.</source>
        <translation>Das Instrument liest %1.</translation>
    </message>
    <message>
        <source>The instrument reads nothing.</source>
        <translation>Das Instrument liest nichts.</translation>
    </message>
    <message>
        <source>nothing is read</source>
        <translation>es wird nichts gelesen</translation>
    </message>
    <message>
        <source>a number is expected</source>
        <translation>eine Zahl wird erwartet</translation>
    </message>
    <message>
        <source>read %1</source>
        <translation>gelesen %1</translation>
    </message>
    <message>
        <source>Factor %1, offset %2.</source>
        <translation>Faktor %1, Versatz %2.</translation>
    </message>
    <message>
        <source>The two points are too near to one another.</source>
        <translation>Die beiden Punkte liegen zu nahe beieinander.</translation>
    </message>
</context>
<context>
    <name>bothways::app::ChannelMappingTable</name>
    <message>
        <source>What the columns are</source>
        <translation>Was die Spalten sind</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>First cells</source>
        <translation>Erste Zellen</translation>
    </message>
    <message>
        <source>is</source>
        <translation>ist</translation>
    </message>
    <message>
        <source>recorded in</source>
        <translation>aufgezeichnet in</translation>
    </message>
    <message>
        <source>What the column %1 is</source>
        <translation>Was die Spalte %1 ist</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>weggelassen</translation>
    </message>
    <message>
        <source>time in seconds</source>
        <translation>Zeit in Sekunden</translation>
    </message>
    <message>
        <source>time by the clock</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>date of the time</source>
        <translation>Datum zur Uhrzeit</translation>
    </message>
    <message>
        <source>marks, in words</source>
        <translation>Marken, in Worten</translation>
    </message>
    <message>
        <source>itself: %1</source>
        <translation>sie selbst: %1</translation>
    </message>
    <message>
        <source>Unit of the column %1</source>
        <translation>Einheit der Spalte %1</translation>
    </message>
    <message>
        <source>A unit, or factor and offset to ours: *0.5556-17.78</source>
        <translation>Eine Einheit, oder Faktor und Versatz zu unserer: *0,5556-17,78</translation>
    </message>
</context>
<context>
    <name>bothways::app::ChannelTile</name>
    <message>
        <source>Press to see another channel here</source>
        <translation>Drücken, um hier einen anderen Kanal zu sehen</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>silent</source>
        <translation>schweigt</translation>
    </message>
    <message>
        <source>beyond the limit</source>
        <translation>jenseits der Grenze</translation>
    </message>
    <message>
        <source>near the limit</source>
        <translation>nahe der Grenze</translation>
    </message>
    <message>
        <source>%1: silent</source>
        <translation>%1: schweigt</translation>
    </message>
</context>
<context>
    <name>bothways::app::ChecksPage</name>
    <message>
        <source>Without a verdict there are no assumptions to check.</source>
        <translation>Ohne Urteil gibt es keine Annahmen zu prüfen.</translation>
    </message>
    <message numerus="yes">
        <source>%n check(s) fail: read them before you trust the interval.</source>
        <translation>
            <numerusform>%n Annahme ist verletzt: Lesen Sie die Prüfung, bevor Sie dem Intervall trauen.</numerusform>
            <numerusform>%n Annahmen sind verletzt: Lesen Sie die Prüfungen, bevor Sie dem Intervall trauen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No check fails; %n of them deserve(s) a look.</source>
        <translation>
            <numerusform>Keine Annahme ist verletzt; %n Prüfung verdient einen Blick.</numerusform>
            <numerusform>Keine Annahme ist verletzt; %n Prüfungen verdienen einen Blick.</numerusform>
        </translation>
    </message>
    <message>
        <source>No check that these runs allow fails.</source>
        <translation>Keine Annahme, die sich mit diesen Fahrten prüfen lässt, ist verletzt.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>bothways::app::ClockRow</name>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source>The recorder&apos;s clock is &amp;fast by</source>
        <translation>Die Uhr des &amp;Loggers geht vor um</translation>
    </message>
    <message>
        <source>found out from the times</source>
        <translation>aus den Zeiten ermittelt</translation>
    </message>
    <message>
        <source>&amp;Local time is</source>
        <translation>&amp;Ortszeit ist</translation>
    </message>
    <message>
        <source>Without a clock, it &amp;began at</source>
        <translation>Ohne Uhr &amp;begann sie um</translation>
    </message>
    <message>
        <source>When time 0 of the recording was: a time of day of the study&apos;s date, or date and time like 2026-05-09 05:40</source>
        <translation>Wann die Zeit 0 der Aufzeichnung war: eine Uhrzeit am Datum der Studie oder Datum und Uhrzeit wie 09.05.2026 05:40</translation>
    </message>
</context>
<context>
    <name>bothways::app::ColumnsDialog</name>
    <message>
        <source>What the columns are</source>
        <translation>Was die Spalten sind</translation>
    </message>
    <message>
        <source>kept, without a meaning</source>
        <translation>bleibt, ohne Bedeutung</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>quantity, unit</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>&amp;Sheet:</source>
        <translation>&amp;Blatt:</translation>
    </message>
    <message>
        <source>please choose</source>
        <translation>bitte wählen</translation>
    </message>
    <message>
        <source>the day comes first</source>
        <translation>der Tag steht vorn</translation>
    </message>
    <message>
        <source>the month comes first</source>
        <translation>der Monat steht vorn</translation>
    </message>
    <message>
        <source>The first rows of the sheet, and what each column becomes</source>
        <translation>Die ersten Zeilen des Blatts, und was aus jeder Spalte wird</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importieren</translation>
    </message>
    <message>
        <source>Of &amp;dates like %1:</source>
        <translation>Bei &amp;Daten wie %1:</translation>
    </message>
    <message>
        <source>Of &amp;dates:</source>
        <translation>Bei &amp;Daten:</translation>
    </message>
    <message>
        <source>What column %1 becomes</source>
        <translation>Was aus der Spalte %1 wird</translation>
    </message>
    <message>
        <source>in which unit?</source>
        <translation>in welcher Einheit?</translation>
    </message>
    <message>
        <source>%1, from %2</source>
        <comment>quantity, unit as written</comment>
        <translation>%1, aus %2</translation>
    </message>
    <message>
        <source>becomes</source>
        <translation>wird zu</translation>
    </message>
    <message>
        <source>%1 has a form of its own. Say what its columns are where that is not known; it is kept for the next sheet with this header.</source>
        <translation>%1 hat eine eigene Form. Sagen Sie, was ihre Spalten sind, wo das nicht bekannt ist; es wird für das nächste Blatt mit dieser Kopfzeile gemerkt.</translation>
    </message>
    <message>
        <source>In %1 no line names columns that are known. Is it the first one below? Then say what its columns are.</source>
        <translation>In %1 nennt keine Zeile Spalten, die bekannt sind. Ist es die erste hier unten? Dann sagen Sie, was ihre Spalten sind.</translation>
    </message>
    <message>
        <source>Found: %1.</source>
        <translation>Gefunden: %1.</translation>
    </message>
    <message>
        <source>a consumption</source>
        <translation>ein Verbrauch</translation>
    </message>
    <message>
        <source>what at least four of the columns are</source>
        <translation>was wenigstens vier der Spalten sind</translation>
    </message>
    <message>
        <source>the order of dates</source>
        <translation>die Reihenfolge im Datum</translation>
    </message>
    <message>
        <source>which sheet it is</source>
        <translation>welches Blatt es ist</translation>
    </message>
    <message>
        <source>Nothing is missing.</source>
        <translation>Es fehlt nichts.</translation>
    </message>
    <message>
        <source>Still missing: %1.</source>
        <translation>Es fehlt noch: %1.</translation>
    </message>
    <message>
        <source>hidden</source>
        <translation>verborgen</translation>
    </message>
</context>
<context>
    <name>bothways::app::CompanionsPage</name>
    <message>
        <source>Other honest ways to the same number</source>
        <translation>Andere ehrliche Wege zur selben Zahl</translation>
    </message>
    <message>
        <source>Which pair does it hang on?</source>
        <translation>An welchem Paar hängt es?</translation>
    </message>
    <message>
        <source>Did the discards choose the result?</source>
        <translation>Hat das Verwerfen das Ergebnis ausgesucht?</translation>
    </message>
    <message>
        <source>Without a verdict there is nothing to set beside it.</source>
        <translation>Ohne Urteil gibt es nichts, womit man es vergleichen könnte.</translation>
    </message>
    <message>
        <source>None of the other ways that these runs allow contradicts the headline.</source>
        <translation>Keiner der anderen Wege, die diese Fahrten erlauben, widerspricht dem Hauptergebnis.</translation>
    </message>
    <message>
        <source>Headline and companions</source>
        <translation>Hauptergebnis und Gegenproben</translation>
    </message>
    <message>
        <source>way</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>effect</source>
        <translation>Effekt</translation>
    </message>
    <message>
        <source>%1 interval</source>
        <translation>%1-Intervall</translation>
    </message>
    <message>
        <source>df</source>
        <comment>degrees of freedom</comment>
        <translation>FG</translation>
    </message>
    <message>
        <source>p</source>
        <translation>p</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Headline and companions in numbers</source>
        <translation>Hauptergebnis und Gegenproben in Zahlen</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>Discards put back</source>
        <translation>Verworfene Fahrten wieder gewertet</translation>
    </message>
    <message>
        <source>change of consumption with %1, in per cent</source>
        <translation>Verbrauchsänderung mit %1, in Prozent</translation>
    </message>
    <message>
        <source>counted again</source>
        <translation>wieder gewertet</translation>
    </message>
    <message>
        <source>discarded for</source>
        <translation>verworfen wegen</translation>
    </message>
    <message>
        <source>evidence</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>Discards put back in numbers</source>
        <translation>Verworfene Fahrten wieder gewertet, in Zahlen</translation>
    </message>
    <message>
        <source>cannot be put back: no consumption</source>
        <translation>kann nicht wieder gewertet werden: kein Verbrauch</translation>
    </message>
</context>
<context>
    <name>bothways::app::CompareDialog</name>
    <message>
        <source>Compare studies</source>
        <translation>Studien vergleichen</translation>
    </message>
    <message>
        <source>Add studies to compare</source>
        <translation>Studien zum Vergleich hinzufügen</translation>
    </message>
    <message numerus="yes">
        <source>Reading %n study(s)…</source>
        <translation>
            <numerusform>Lese %n Studie …</numerusform>
            <numerusform>Lese %n Studien …</numerusform>
        </translation>
    </message>
    <message>
        <source>Studies and run sheets (*.bothways *.csv *.tsv *.txt *.xlsx *.ods);;All files (*)</source>
        <translation>Studien und Fahrtenblätter (*.bothways *.csv *.tsv *.txt *.xlsx *.ods);;Alle Dateien (*)</translation>
    </message>
</context>
<context>
    <name>bothways::app::ComparePage</name>
    <message>
        <source>&amp;Add a study…</source>
        <translation>Studie &amp;hinzufügen…</translation>
    </message>
    <message>
        <source>&amp;Take it off the list</source>
        <translation>Aus der &amp;Liste nehmen</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <extracomment>an effect and its interval</extracomment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Studies side by side</source>
        <translation>Studien nebeneinander</translation>
    </message>
    <message>
        <source>change of consumption with the device, in per cent</source>
        <translation>Verbrauchsänderung mit dem Gerät, in Prozent</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>study</source>
        <translation>Studie</translation>
    </message>
    <message>
        <source>baseline</source>
        <translation>Referenz</translation>
    </message>
    <message>
        <source>device</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>pairs</source>
        <translation>Paare</translation>
    </message>
    <message>
        <source>effect</source>
        <translation>Effekt</translation>
    </message>
    <message>
        <source>interval</source>
        <translation>Intervall</translation>
    </message>
    <message>
        <source>p</source>
        <translation>p</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Studies side by side in numbers</source>
        <translation>Studien nebeneinander in Zahlen</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
</context>
<context>
    <name>bothways::app::CutDialog</name>
    <message numerus="yes">
        <source>the run sheet&apos;s times: %n part(s)</source>
        <translation>
            <numerusform>Zeiten des Fahrtenblatts: %n Teil</numerusform>
            <numerusform>Zeiten des Fahrtenblatts: %n Teile</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>marks: %n part(s)</source>
        <translation>
            <numerusform>Marken: %n Teil</numerusform>
            <numerusform>Marken: %n Teile</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>positions: %n part(s)</source>
        <translation>
            <numerusform>Positionen: %n Teil</numerusform>
            <numerusform>Positionen: %n Teile</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>a held speed: %n part(s)</source>
        <translation>
            <numerusform>gehaltene Geschwindigkeit: %n Teil</numerusform>
            <numerusform>gehaltene Geschwindigkeit: %n Teile</numerusform>
        </translation>
    </message>
    <message>
        <source>Cut %1 into runs</source>
        <translation>%1 in Fahrten schneiden</translation>
    </message>
    <message>
        <source>Cut &amp;by</source>
        <translation>Schneiden &amp;nach</translation>
    </message>
    <message>
        <source>Reading the recording…</source>
        <translation>Die Aufzeichnung wird gelesen…</translation>
    </message>
    <message>
        <source>Drag an edge, or press E to choose one and Ctrl+Left or Ctrl+Right to move it by a second.</source>
        <translation>Ziehen Sie eine Kante, oder wählen Sie mit E eine aus und verschieben Sie sie mit Strg+Links oder Strg+Rechts um eine Sekunde.</translation>
    </message>
    <message>
        <source>&amp;Make these runs</source>
        <translation>Diese &amp;Fahrten anlegen</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>Nothing in the recording to cut by in this way.</source>
        <translation>In der Aufzeichnung gibt es nichts, wonach sich so schneiden ließe.</translation>
    </message>
    <message>
        <source>Runs that are &amp;there take start and length of their part</source>
        <translation>Vorhandene Fahrten &amp;übernehmen Beginn und Länge ihres Teils</translation>
    </message>
    <message>
        <source>A part that lies where the run sheet has its run changes nothing; the start follows where the recording has a clock</source>
        <translation>Ein Teil, der liegt, wo das Fahrtenblatt seine Fahrt hat, ändert nichts; der Beginn folgt, wo die Aufzeichnung eine Uhr hat</translation>
    </message>
    <message>
        <source>Looking where the gates are passed…</source>
        <translation>Es wird gesucht, wo die Tore durchfahren werden …</translation>
    </message>
    <message>
        <source>Type where the gates at the two ends of the stretch are.</source>
        <translation>Geben Sie ein, wo die Tore an den beiden Enden der Strecke sind.</translation>
    </message>
</context>
<context>
    <name>bothways::app::CutPlot</name>
    <message>
        <source>time in the recording</source>
        <translation>Zeit in der Aufzeichnung</translation>
    </message>
    <message>
        <source>road speed, %1</source>
        <translation>Geschwindigkeit, %1</translation>
    </message>
    <message>
        <source>%1: from %2 s to %3 s.</source>
        <translation>%1: von %2&#xa0;s bis %3&#xa0;s.</translation>
    </message>
    <message>
        <source>Parts of the recording</source>
        <translation>Teile der Aufzeichnung</translation>
    </message>
</context>
<context>
    <name>bothways::app::CutTable</name>
    <message>
        <source>Parts of the recording</source>
        <translation>Teile der Aufzeichnung</translation>
    </message>
    <message>
        <source>A run</source>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>becomes</source>
        <translation>wird zu</translation>
    </message>
    <message>
        <source>Part %1 from</source>
        <translation>Teil %1 von</translation>
    </message>
    <message>
        <source>Part %1 to</source>
        <translation>Teil %1 bis</translation>
    </message>
    <message>
        <source>Direction of part %1</source>
        <translation>Richtung von Teil %1</translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source>What becomes of part %1</source>
        <translation>Was aus Teil %1 wird</translation>
    </message>
    <message>
        <source>a new run, %1</source>
        <translation>einer neuen Fahrt, %1</translation>
    </message>
    <message>
        <source>run %1: %2, %3</source>
        <extracomment>number, configuration, direction of a run</extracomment>
        <translation>Fahrt %1: %2, %3</translation>
    </message>
    <message>
        <source>The new runs below follow, up to one that was chosen itself: a block is chosen with its first run</source>
        <translation>Die neuen Fahrten darunter folgen, bis zu einer, die selbst gewählt wurde: Ein Block wird mit seiner ersten Fahrt gewählt</translation>
    </message>
</context>
<context>
    <name>bothways::app::DayPlot</name>
    <message>
        <source>pair with %1</source>
        <translation>Paar mit %1</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>angepasst</translation>
    </message>
    <message>
        <source>discarded run</source>
        <translation>verworfene Fahrt</translation>
    </message>
    <message>
        <source>run without a partner</source>
        <translation>Fahrt ohne Partner</translation>
    </message>
    <message>
        <source>time of day</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>% of the control vehicle&apos;s</source>
        <translation>% des Kontrollfahrzeugs</translation>
    </message>
    <message>
        <source>Pairs over time</source>
        <translation>Paare über der Zeit</translation>
    </message>
    <message>
        <source>No run has a consumption yet.</source>
        <translation>Noch hat keine Fahrt einen Verbrauch.</translation>
    </message>
</context>
<context>
    <name>bothways::app::DiscardDialog</name>
    <message>
        <source>Discard runs</source>
        <translation>Fahrten verwerfen</translation>
    </message>
    <message>
        <source>Run %1 will not count. It stays in the list, with the reason.</source>
        <translation>Fahrt %1 zählt dann nicht. Sie bleibt in der Liste, mit dem Grund.</translation>
    </message>
    <message>
        <source>Runs %1 will not count. They stay in the list, with the reason.</source>
        <translation>Die Fahrten %1 zählen dann nicht. Sie bleiben in der Liste, mit dem Grund.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Other reason, in words</source>
        <translation>Anderer Grund, in Worten</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Grund</translation>
    </message>
    <message>
        <source>&amp;Evidence</source>
        <translation>&amp;Beleg</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>What happened; needed here</source>
        <translation>Was geschah; hier nötig</translation>
    </message>
    <message>
        <source>What happened, if there is more to say</source>
        <translation>Was geschah, falls es mehr zu sagen gibt</translation>
    </message>
    <message>
        <source>Photo or &amp;clip</source>
        <translation>&amp;Foto oder Film</translation>
    </message>
    <message>
        <source>Photo or clip</source>
        <translation>Foto oder Film</translation>
    </message>
    <message>
        <source>Name, size and SHA-256 are kept, not the file</source>
        <translation>Name, Größe und SHA-256 werden behalten, nicht die Datei</translation>
    </message>
    <message>
        <source>Choo&amp;se…</source>
        <translation>&amp;Wählen…</translation>
    </message>
    <message>
        <source>At which second of the clip</source>
        <translation>Bei welcher Sekunde des Films</translation>
    </message>
    <message>
        <source>a&amp;t second</source>
        <translation>bei &amp;Sekunde</translation>
    </message>
    <message>
        <source>The second is one of a clip: choose the clip.</source>
        <translation>Die Sekunde ist die eines Films: bitte den Film wählen.</translation>
    </message>
    <message>
        <source>Expected the second of the clip, such as 83.5.</source>
        <translation>Erwartet wird die Sekunde des Films, etwa 83,5.</translation>
    </message>
</context>
<context>
    <name>bothways::app::EffectPlot</name>
    <message>
        <source>◀ %1 uses less</source>
        <translation>◀ %1 verbraucht weniger</translation>
    </message>
    <message>
        <source>%1 uses more ▶</source>
        <translation>%1 verbraucht mehr ▶</translation>
    </message>
    <message>
        <source>Effect and interval</source>
        <translation>Effekt und Intervall</translation>
    </message>
    <message>
        <source>low end of the %1 interval: %2</source>
        <translation>unteres Ende des %1-Intervalls: %2</translation>
    </message>
    <message>
        <source>effect: %1</source>
        <translation>Effekt: %1</translation>
    </message>
    <message>
        <source>high end of the %1 interval: %2</source>
        <translation>oberes Ende des %1-Intervalls: %2</translation>
    </message>
    <message>
        <source>change of consumption with %1 against %2, in per cent (shaded: within ±%3&#xa0;%, too small to care about)</source>
        <translation>Verbrauchsänderung, %1 gegen %2, in Prozent (schattiert: ±%3&#xa0;%, zu klein, um wichtig zu sein)</translation>
    </message>
    <message>
        <source>change of consumption with %1 against %2, in per cent (thin line: %3 interval, thick line: %4 interval, shaded: within ±%5&#xa0;%, too small to care about)</source>
        <translation>Verbrauchsänderung, %1 gegen %2, in Prozent (dünne Linie: %3-Intervall, dicke Linie: %4-Intervall, schattiert: ±%5&#xa0;%, zu klein, um wichtig zu sein)</translation>
    </message>
    <message>
        <source>claimed: %1&#xa0;% less</source>
        <translation>behauptet: %1&#xa0;% weniger</translation>
    </message>
    <message>
        <source>claimed: %1&#xa0;% more</source>
        <translation>behauptet: %1&#xa0;% mehr</translation>
    </message>
    <message>
        <source>There is no interval yet.</source>
        <translation>Es gibt noch kein Intervall.</translation>
    </message>
</context>
<context>
    <name>bothways::app::ExpectedPlot</name>
    <message>
        <source>expected</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>change of consumption, per cent: left of zero is less</source>
        <translation>Verbrauchsänderung, Prozent: links von null ist weniger</translation>
    </message>
    <message>
        <source>Expected and measured</source>
        <translation>Erwartet und gemessen</translation>
    </message>
    <message>
        <source>Expected change between %1 and %2 %.</source>
        <translation>Erwartete Änderung zwischen %1 und %2&#xa0;%.</translation>
    </message>
</context>
<context>
    <name>bothways::app::FindingsModel</name>
    <message>
        <source>accepted: run discarded</source>
        <translation>angenommen: Fahrt verworfen</translation>
    </message>
    <message>
        <source>overruled: %1</source>
        <translation>zurückgewiesen: %1</translation>
    </message>
    <message>
        <source>run discarded: %1</source>
        <translation>Fahrt verworfen: %1</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
</context>
<context>
    <name>bothways::app::FindingsPanel</name>
    <message>
        <source>Findings of the screening</source>
        <translation>Befunde der Sichtung</translation>
    </message>
    <message>
        <source>Nothing was found.</source>
        <translation>Nichts gefunden.</translation>
    </message>
    <message>
        <source>Accept: discard the run</source>
        <translation>Annehmen: Fahrt verwerfen</translation>
    </message>
    <message>
        <source>Discard the run, with the finding as the reason</source>
        <translation>Die Fahrt verwerfen, mit dem Befund als Grund</translation>
    </message>
    <message>
        <source>Why the run counts all the same</source>
        <translation>Warum die Fahrt trotzdem zählt</translation>
    </message>
    <message>
        <source>Overrule</source>
        <translation>Zurückweisen</translation>
    </message>
    <message>
        <source>The run counts all the same; your words are kept</source>
        <translation>Die Fahrt zählt trotzdem; Ihre Worte werden aufbewahrt</translation>
    </message>
    <message>
        <source>All of this rule</source>
        <translation>Alle dieser Regel</translation>
    </message>
    <message>
        <source>Answer every open finding of the same rule at once</source>
        <translation>Alle offenen Befunde derselben Regel auf einmal beantworten</translation>
    </message>
    <message>
        <source>the rule of this finding</source>
        <translation>die Regel dieses Befunds</translation>
    </message>
    <message>
        <source>What the rule looks at: %1</source>
        <translation>Worauf die Regel achtet: %1</translation>
    </message>
    <message>
        <source>There are no runs to look at yet.</source>
        <translation>Es gibt noch keine Fahrten zu prüfen.</translation>
    </message>
    <message>
        <source>Missing: %1</source>
        <translation>Fehlt: %1</translation>
    </message>
    <message>
        <source>Open %1 (it was changed)</source>
        <translation>%1 öffnen (wurde geändert)</translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>%1 öffnen</translation>
    </message>
    <message>
        <source>This study is open for reading only.</source>
        <translation>Diese Studie ist nur zum Lesen geöffnet.</translation>
    </message>
    <message>
        <source>Which rule said nothing about which run, and why. Not checked is not the same as passed.</source>
        <translation>Welche Regel zu welcher Fahrt nichts sagte, und warum. Nicht geprüft ist nicht dasselbe wie bestanden.</translation>
    </message>
    <message numerus="yes">
        <source>%n rule(s) not checked on every run…</source>
        <translation>
            <numerusform>%n Regel nicht bei allen Fahrten geprüft…</numerusform>
            <numerusform>%n Regeln nicht bei allen Fahrten geprüft…</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::ForestPlot</name>
    <message>
        <source>There is nothing to compare yet.</source>
        <translation>Es gibt noch nichts zu vergleichen.</translation>
    </message>
</context>
<context>
    <name>bothways::app::FormArea</name>
    <message>
        <source>Entry of a run</source>
        <translation>Eingabe einer Fahrt</translation>
    </message>
</context>
<context>
    <name>bothways::app::GateRow</name>
    <message>
        <source>Take both from the chosen &amp;part</source>
        <translation>Beide vom gewählten &amp;Teil nehmen</translation>
    </message>
    <message>
        <source>&amp;Start gate</source>
        <translation>&amp;Starttor</translation>
    </message>
    <message>
        <source>&amp;End gate</source>
        <translation>&amp;Endtor</translation>
    </message>
    <message>
        <source>Latitude of the start gate</source>
        <translation>Breite des Starttors</translation>
    </message>
    <message>
        <source>Longitude of the start gate</source>
        <translation>Länge des Starttors</translation>
    </message>
    <message>
        <source>Latitude of the end gate</source>
        <translation>Breite des Endtors</translation>
    </message>
    <message>
        <source>Longitude of the end gate</source>
        <translation>Länge des Endtors</translation>
    </message>
    <message>
        <source> m</source>
        <translation> m</translation>
    </message>
    <message>
        <source>&amp;Reach to each side</source>
        <translation>&amp;Reichweite nach jeder Seite</translation>
    </message>
    <message>
        <source>The gates become the places where the part chosen in the list starts and ends</source>
        <translation>Die Tore kommen dorthin, wo der in der Liste gewählte Teil beginnt und endet</translation>
    </message>
    <message>
        <source>latitude, °</source>
        <translation>Breite, °</translation>
    </message>
    <message>
        <source>longitude, °</source>
        <translation>Länge, °</translation>
    </message>
</context>
<context>
    <name>bothways::app::HelpBrowser</name>
    <message>
        <source>Page of the handbook</source>
        <translation>Seite des Handbuchs</translation>
    </message>
</context>
<context>
    <name>bothways::app::HelpWindow</name>
    <message>
        <source>Handbook – Bothways</source>
        <translation>Handbuch – Bothways</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>◀ Back</source>
        <translation>◀ Zurück</translation>
    </message>
    <message>
        <source>Forward ▶</source>
        <translation>Vor ▶</translation>
    </message>
    <message>
        <source>Find in this page (Ctrl+F)</source>
        <translation>Auf dieser Seite suchen (Strg+F)</translation>
    </message>
    <message>
        <source>Find in this page</source>
        <translation>Auf dieser Seite suchen</translation>
    </message>
    <message>
        <source>Place before</source>
        <translation>Stelle davor</translation>
    </message>
    <message>
        <source>Next place</source>
        <translation>Nächste Stelle</translation>
    </message>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation>
            <numerusform>%n Stelle</numerusform>
            <numerusform>%n Stellen</numerusform>
        </translation>
    </message>
    <message>
        <source>Search all pages</source>
        <translation>Alle Seiten durchsuchen</translation>
    </message>
    <message>
        <source>Contents of the handbook</source>
        <translation>Inhalt des Handbuchs</translation>
    </message>
    <message>
        <source>Places that were found</source>
        <translation>Gefundene Stellen</translation>
    </message>
    <message>
        <source>No page has all of these words.</source>
        <translation>Keine Seite enthält alle diese Wörter.</translation>
    </message>
</context>
<context>
    <name>bothways::app::HistoryModel</name>
    <message>
        <source>%1 (undone)</source>
        <translation>%1 (rückgängig gemacht)</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Detail</source>
        <translation>Einzelheit</translation>
    </message>
</context>
<context>
    <name>bothways::app::HistoryPanel</name>
    <message>
        <source>What changed when, newest first</source>
        <translation>Was sich wann änderte, Neuestes zuerst</translation>
    </message>
</context>
<context>
    <name>bothways::app::ImportProblemsDialog</name>
    <message>
        <source>Run sheet not imported</source>
        <translation>Fahrtenblatt nicht importiert</translation>
    </message>
    <message numerus="yes">
        <source>%1 was not imported, and the study is as it was. %n place(s) in it need a look:</source>
        <translation>
            <numerusform>%1 wurde nicht importiert, und die Studie ist, wie sie war. %n Stelle darin verlangt einen Blick:</numerusform>
            <numerusform>%1 wurde nicht importiert, und die Studie ist, wie sie war. %n Stellen darin verlangen einen Blick:</numerusform>
        </translation>
    </message>
    <message>
        <source>Places in the run sheet that need a look</source>
        <translation>Stellen im Fahrtenblatt, die einen Blick verlangen</translation>
    </message>
    <message>
        <source>Line and column</source>
        <translation>Zeile und Spalte</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Was nicht stimmt</translation>
    </message>
    <message>
        <source>Copy the list</source>
        <translation>Liste kopieren</translation>
    </message>
    <message>
        <source>Import again</source>
        <translation>Noch einmal importieren</translation>
    </message>
    <message>
        <source>sheet %1</source>
        <translation>Blatt %1</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
</context>
<context>
    <name>bothways::app::InstrumentForm</name>
    <message>
        <source>Add a &amp;channel</source>
        <translation>&amp;Kanal dazu</translation>
    </message>
    <message>
        <source>Remove the c&amp;hannel</source>
        <translation>Kanal ent&amp;fernen</translation>
    </message>
    <message>
        <source>serial:/dev/ttyUSB0,115200 or tcp:192.168.1.7:2000 or udp:*:2000 or file:PATH</source>
        <translation>serial:/dev/ttyUSB0,115200 oder tcp:192.168.1.7:2000 oder udp:*:2000 oder file:PFAD</translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>petrol</source>
        <translation>Benzin</translation>
    </message>
    <message>
        <source>petrol with 10 % ethanol</source>
        <translation>Benzin mit 10 % Ethanol</translation>
    </message>
    <message>
        <source>diesel</source>
        <translation>Diesel</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>N&amp;ame</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>A&amp;rt</translation>
    </message>
    <message>
        <source>&amp;Address</source>
        <translation>A&amp;dresse</translation>
    </message>
    <message>
        <source>Device &amp;unit</source>
        <translation>G&amp;erätenummer</translation>
    </message>
    <message>
        <source>Asked e&amp;very</source>
        <translation>A&amp;bgefragt alle</translation>
    </message>
    <message>
        <source>Times as &amp;fast</source>
        <translation>So viel Mal so &amp;schnell</translation>
    </message>
    <message>
        <source>Fuel from a&amp;ir mass</source>
        <translation>Kraftstoff aus &amp;Luftmasse</translation>
    </message>
    <message>
        <source>Channels of the instrument</source>
        <translation>Kanäle des Instruments</translation>
    </message>
    <message>
        <source>Value here = what is read × factor + offset. Empty: whatever comes is recorded under its own name.</source>
        <translation>Wert hier = Gelesenes × Faktor + Versatz. Leer: Was kommt, wird unter seinem eigenen Namen aufgezeichnet.</translation>
    </message>
    <message>
        <source>Named there</source>
        <translation>Heißt dort</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Hier</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Factor</source>
        <translation>Faktor</translation>
    </message>
    <message>
        <source>Offset</source>
        <translation>Versatz</translation>
    </message>
    <message>
        <source>lines of numbers</source>
        <translation>Zeilen von Zahlen</translation>
    </message>
    <message>
        <source>position receiver (NMEA 0183)</source>
        <translation>Positionsempfänger (NMEA 0183)</translation>
    </message>
    <message>
        <source>meter or converter (Modbus)</source>
        <translation>Zähler oder Wandler (Modbus)</translation>
    </message>
    <message>
        <source>the car&apos;s diagnostic socket (SAE J1979)</source>
        <translation>Diagnosebuchse des Wagens (SAE J1979)</translation>
    </message>
    <message>
        <source>a recording, played</source>
        <translation>eine Aufzeichnung, abgespielt</translation>
    </message>
    <message>
        <source>What the channel is called here</source>
        <translation>Wie der Kanal hier heißt</translation>
    </message>
</context>
<context>
    <name>bothways::app::KeysDialog</name>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Menu</source>
        <translation>Menü</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Taste</translation>
    </message>
</context>
<context>
    <name>bothways::app::LeaveOneOutPlot</name>
    <message>
        <source>without that pair</source>
        <translation>ohne dieses Paar</translation>
    </message>
    <message>
        <source>the verdict changes</source>
        <translation>das Urteil ändert sich</translation>
    </message>
    <message>
        <source>with all pairs, and its interval</source>
        <translation>mit allen Paaren, und das Intervall dazu</translation>
    </message>
    <message>
        <source>without pair %1 (%2): %3
%4</source>
        <translation>ohne Paar %1 (%2): %3
%4</translation>
    </message>
    <message>
        <source>pair left out</source>
        <translation>weggelassenes Paar</translation>
    </message>
    <message>
        <source>effect, %</source>
        <translation>Effekt, %</translation>
    </message>
    <message>
        <source>Leave one pair out</source>
        <translation>Je ein Paar weglassen</translation>
    </message>
    <message>
        <source>There are too few pairs to leave one out.</source>
        <translation>Es sind zu wenige Paare, um eines wegzulassen.</translation>
    </message>
</context>
<context>
    <name>bothways::app::LedgerFlow</name>
    <message>
        <source>From fuel to the road and back</source>
        <translation>Vom Kraftstoff zur Straße und zurück</translation>
    </message>
    <message>
        <source>%1 W</source>
        <translation>%1&#xa0;W</translation>
    </message>
    <message>
        <source>device delivers</source>
        <translation>Gerät liefert</translation>
    </message>
    <message>
        <source>alternator need not take</source>
        <translation>Lichtmaschine spart</translation>
    </message>
    <message>
        <source>engine need not burn</source>
        <translation>Motor muss nicht verbrennen</translation>
    </message>
    <message>
        <source>fuel saved</source>
        <translation>Kraftstoff gespart</translation>
    </message>
    <message>
        <source>generator takes</source>
        <translation>Generator nimmt auf</translation>
    </message>
    <message>
        <source>rotor&apos;s drag takes</source>
        <translation>Rotorwiderstand kostet</translation>
    </message>
    <message>
        <source>engine gives</source>
        <translation>Motor gibt ab</translation>
    </message>
    <message>
        <source>engine burns</source>
        <translation>Motor verbrennt</translation>
    </message>
    <message>
        <source>fuel spent</source>
        <translation>Kraftstoff aufgewendet</translation>
    </message>
    <message>
        <source>Relief</source>
        <translation>Entlastung</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Aufwand</translation>
    </message>
    <message>
        <source>%1: switched off</source>
        <translation>%1: abgeschaltet</translation>
    </message>
</context>
<context>
    <name>bothways::app::LedgerPage</name>
    <message>
        <source>low</source>
        <translation>niedrig</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>high</source>
        <translation>hoch</translation>
    </message>
    <message>
        <source> W</source>
        <translation> W</translation>
    </message>
    <message>
        <source>Electrical output</source>
        <translation>Elektrische Abgabeleistung</translation>
    </message>
    <message>
        <source> km/h</source>
        <translation> km/h</translation>
    </message>
    <message>
        <source>Road speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source> L/100 km</source>
        <translation> l/100 km</translation>
    </message>
    <message>
        <source>Consumption</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>petrol</source>
        <translation>Benzin</translation>
    </message>
    <message>
        <source>petrol E10</source>
        <translation>Benzin E10</translation>
    </message>
    <message>
        <source>diesel</source>
        <translation>Diesel</translation>
    </message>
    <message>
        <source>electric drive</source>
        <translation>Elektroantrieb</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source> MJ/L</source>
        <translation> MJ/l</translation>
    </message>
    <message>
        <source>Lower heating value. Between published figures for petrol of 32.05 (US EPA) and 32.36 MJ/L (Argonne GREET); diesel 35.8 to 36.1.</source>
        <translation>Unterer Heizwert. Zwischen den veröffentlichten Werten für Benzin von 32,05 (US EPA) und 32,36 MJ/l (Argonne GREET); Diesel 35,8 bis 36,1.</translation>
    </message>
    <message>
        <source>Heating value</source>
        <translation>Heizwert</translation>
    </message>
    <message>
        <source>Alternator</source>
        <translation>Lichtmaschine</translation>
    </message>
    <message>
        <source>0.67 in the EU&apos;s guidelines, 0.55 in Bradfield (2008); range common practice.</source>
        <translation>0,67 in den Leitlinien der EU, 0,55 bei Bradfield (2008); Spanne: übliche Praxis.</translation>
    </message>
    <message>
        <source>Engine, next watt</source>
        <translation>Motor, je weiteres Watt</translation>
    </message>
    <message>
        <source>Decision (EU) 2020/728: 0.264 L/kWh petrol, about 0.43; range common practice.</source>
        <translation>Beschluss (EU) 2020/728: 0,264&#xa0;l/kWh Benzin, etwa 0,43; Spanne: übliche Praxis.</translation>
    </message>
    <message>
        <source>Generator</source>
        <translation>Generator</translation>
    </message>
    <message>
        <source>Common practice, no source.</source>
        <translation>Übliche Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <source>Drive to the wheels</source>
        <translation>Antrieb bis zum Rad</translation>
    </message>
    <message>
        <source>Axial induction of the rotor; one third at the point of most power (Betz 1920).</source>
        <translation>Axiale Induktion des Rotors; ein Drittel im Punkt der größten Leistung (Betz 1920).</translation>
    </message>
    <message>
        <source>Induction</source>
        <translation>Induktion</translation>
    </message>
    <message>
        <source>Relief, cost and net</source>
        <translation>Entlastung, Aufwand und Saldo</translation>
    </message>
    <message>
        <source> MJ/kWh</source>
        <translation> MJ/kWh</translation>
    </message>
    <message>
        <source> kWh/100 km</source>
        <translation> kWh/100 km</translation>
    </message>
    <message>
        <source>No ledger: %1.</source>
        <translation>Keine Energiebilanz: %1.</translation>
    </message>
    <message>
        <source>%1 % less</source>
        <translation>%1&#xa0;% weniger</translation>
    </message>
    <message>
        <source>%1 % more</source>
        <translation>%1&#xa0;% mehr</translation>
    </message>
    <message>
        <source>From first principles, expect %1 (from %2 to %3).</source>
        <translation>Aus den physikalischen Grundlagen sind %1 zu erwarten (von %2 bis %3).</translation>
    </message>
    <message>
        <source>Less is reached only with the best generator and drive beside the worst alternator and engine.</source>
        <translation>Weniger wird es nur mit dem besten Generator und Antrieb neben der schlechtesten Lichtmaschine und dem schlechtesten Motor.</translation>
    </message>
    <message>
        <source>Open a study with a verdict to see how many watts the device must deliver before that study could see it.</source>
        <translation>Öffnen Sie eine Studie mit Urteil, um zu sehen, wie viel Watt das Gerät liefern müsste, damit diese Studie es sehen könnte.</translation>
    </message>
    <message>
        <source>With these factors a watt is worth nothing, so no output could be seen.</source>
        <translation>Mit diesen Faktoren ist ein Watt nichts wert; keine Abgabeleistung wäre also zu sehen.</translation>
    </message>
    <message>
        <source>This study can detect a change of %1 %. The net effect reaches that at %2 W; the relief alone, if the drag cost nothing, at %3 W. Below that, this study cannot tell the device from nothing.</source>
        <translation>Diese Studie kann eine Änderung von %1&#xa0;% nachweisen. Der Saldo erreicht das bei %2&#xa0;W; die Entlastung allein, wenn der Luftwiderstand nichts kostete, bei %3&#xa0;W. Darunter kann diese Studie das Gerät nicht von nichts unterscheiden.</translation>
    </message>
    <message>
        <source>100 W of accessories cost some %1 mL on a stretch of %2 at this speed, %3 % of the consumption: an accessory that drops out is as large as many effects that are looked for.</source>
        <translation>100&#xa0;W Nebenverbraucher kosten bei dieser Geschwindigkeit auf einer Strecke von %2 etwa %1&#xa0;ml, also %3&#xa0;% des Verbrauchs: Ein abschaltender Nebenverbraucher ist so groß wie viele Effekte, nach denen gesucht wird.</translation>
    </message>
</context>
<context>
    <name>bothways::app::LookFirstPage</name>
    <message>
        <source>The plan is not fulfilled yet</source>
        <translation>Der Plan ist noch nicht erfüllt</translation>
    </message>
    <message>
        <source>Whoever looks after each block and stops when the answer suits finds an effect that is not there in some 15 of 100 studies, instead of 5. So every look goes on record. One interval holds however often it is looked at; it is about 1.65 times as wide in the end.</source>
        <translation>Wer nach jedem Block nachsieht und aufhört, wenn die Antwort passt, findet in rund 15 von 100 Studien einen Effekt, den es nicht gibt, statt in 5. Deshalb wird jeder Blick festgehalten. Ein Intervall gilt, so oft man es auch ansieht; es ist am Ende etwa 1,65-mal so breit.</translation>
    </message>
    <message>
        <source>Show the &amp;interval that allows looking</source>
        <translation>Das &amp;Intervall zeigen, das Nachsehen erlaubt</translation>
    </message>
    <message>
        <source>Show the &amp;verdict</source>
        <translation>Das &amp;Urteil zeigen</translation>
    </message>
</context>
<context>
    <name>bothways::app::MainWindow</name>
    <message>
        <source>A study was made from the sheet.</source>
        <translation>Aus dem Blatt wurde eine Studie angelegt.</translation>
    </message>
    <message>
        <source>This day is invented. Whatever you do to it is gone when you open the demo again.</source>
        <translation>Dieser Tag ist erfunden. Was Sie daran ändern, ist weg, sobald Sie die Demostudie wieder öffnen.</translation>
    </message>
    <message>
        <source>Everything you type is kept at once in %1.</source>
        <translation>Alles, was Sie eingeben, wird sofort in %1 gespeichert.</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Wiederherstellen: %1</translation>
    </message>
    <message>
        <source>Findings (%1 open)</source>
        <translation>Befunde (%1 offen)</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n Fahrt</numerusform>
            <numerusform>%n Fahrten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n counted</source>
        <translation>
            <numerusform>%n gewertet</numerusform>
            <numerusform>%n gewertet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s)</source>
        <translation>
            <numerusform>%n Paar</numerusform>
            <numerusform>%n Paare</numerusform>
        </translation>
    </message>
    <message>
        <source>consumption hidden</source>
        <translation>Verbrauch verborgen</translation>
    </message>
    <message>
        <source>Bothways</source>
        <translation>Bothways</translation>
    </message>
    <message>
        <source>%1 – Bothways</source>
        <translation>%1 – Bothways</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Computing the result</source>
        <translation>Das Ergebnis wird berechnet</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;New study</source>
        <translation>&amp;Neue Studie</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation>Ctrl+Shift+N</translation>
    </message>
    <message>
        <source>New study &amp;in…</source>
        <translation>Neue Studie &amp;unter…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Öffnen…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt benutzt</translation>
    </message>
    <message>
        <source>Open the &amp;demo study</source>
        <translation>&amp;Demostudie öffnen</translation>
    </message>
    <message>
        <source>&amp;Import a run sheet…</source>
        <translation>Fahrtenblatt &amp;importieren…</translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation>Ctrl+I</translation>
    </message>
    <message>
        <source>&amp;Export the run sheet…</source>
        <translation>Fahrtenblatt &amp;exportieren…</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>Save the &amp;report…</source>
        <translation>&amp;Bericht speichern…</translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <translation>Ctrl+R</translation>
    </message>
    <message>
        <source>&amp;Close the study</source>
        <translation>Studie &amp;schließen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Preferences…</source>
        <translation>&amp;Einstellungen…</translation>
    </message>
    <message>
        <source>Ctrl+,</source>
        <translation>Ctrl+,</translation>
    </message>
    <message>
        <source>&amp;Run</source>
        <translation>&amp;Fahrt</translation>
    </message>
    <message>
        <source>&amp;New run</source>
        <translation>&amp;Neue Fahrt</translation>
    </message>
    <message>
        <source>Ctrl+N</source>
        <translation>Ctrl+N</translation>
    </message>
    <message>
        <source>A new run that starts now, filled in from the last (Ctrl+N or Insert)</source>
        <translation>Eine neue Fahrt, die jetzt beginnt, aus der letzten vorausgefüllt (Strg+N oder Einfg)</translation>
    </message>
    <message>
        <source>&amp;Edit the run</source>
        <translation>Fahrt &amp;bearbeiten</translation>
    </message>
    <message>
        <source>Ctrl+Return</source>
        <translation>Ctrl+Return</translation>
    </message>
    <message>
        <source>&amp;Discard…</source>
        <translation>&amp;Verwerfen…</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>The chosen runs do not count, with a reason (Ctrl+D)</source>
        <translation>Die gewählten Fahrten zählen nicht, mit einem Grund (Strg+D)</translation>
    </message>
    <message>
        <source>&amp;Count again</source>
        <translation>Wieder &amp;werten</translation>
    </message>
    <message>
        <source>Ctrl+Shift+D</source>
        <translation>Ctrl+Shift+D</translation>
    </message>
    <message>
        <source>Lift the discard of the chosen runs (Ctrl+Shift+D)</source>
        <translation>Die gewählten Fahrten wieder zählen lassen (Strg+Umschalt+D)</translation>
    </message>
    <message>
        <source>&amp;Tie as a pair</source>
        <translation>Zum &amp;Paar verbinden</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>Two chosen runs, out and return, become a pair by hand (Ctrl+T)</source>
        <translation>Zwei gewählte Fahrten, hin und zurück, werden von Hand ein Paar (Strg+T)</translation>
    </message>
    <message>
        <source>&amp;Untie</source>
        <translation>Paar &amp;lösen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+T</source>
        <translation>Ctrl+Shift+T</translation>
    </message>
    <message>
        <source>&amp;Note about the run</source>
        <translation>N&amp;otiz zur Fahrt</translation>
    </message>
    <message>
        <source>Next &amp;finding</source>
        <translation>Nächster Be&amp;fund</translation>
    </message>
    <message>
        <source>F4</source>
        <translation>F4</translation>
    </message>
    <message>
        <source>Re&amp;move (typed by mistake)</source>
        <translation>&amp;Entfernen (falsch eingegeben)</translation>
    </message>
    <message>
        <source>Shift+Del</source>
        <translation>Shift+Del</translation>
    </message>
    <message>
        <source>&amp;Accessories on</source>
        <translation>Neben&amp;verbraucher an</translation>
    </message>
    <message>
        <source>&amp;Switched on since</source>
        <translation>&amp;Eingeschaltet seit</translation>
    </message>
    <message>
        <source>&amp;Wind</source>
        <translation>&amp;Wind</translation>
    </message>
    <message>
        <source>&amp;Temperature</source>
        <translation>&amp;Temperatur</translation>
    </message>
    <message>
        <source>&amp;Passing traffic</source>
        <translation>&amp;Verkehr</translation>
    </message>
    <message>
        <source>Ad&amp;justed during the run</source>
        <translation>Während der Fahrt ver&amp;stellt</translation>
    </message>
    <message>
        <source>Other &amp;marks</source>
        <translation>Andere &amp;Marken</translation>
    </message>
    <message>
        <source>&amp;Battery</source>
        <translation>Batte&amp;rie</translation>
    </message>
    <message>
        <source>&amp;Notes</source>
        <translation>&amp;Notizen</translation>
    </message>
    <message>
        <source>&amp;Study</source>
        <translation>&amp;Studie</translation>
    </message>
    <message>
        <source>&amp;Properties…</source>
        <translation>&amp;Eigenschaften…</translation>
    </message>
    <message>
        <source>Alt+Return</source>
        <translation>Alt+Return</translation>
    </message>
    <message>
        <source>&amp;Limits of the rules…</source>
        <translation>&amp;Grenzen der Regeln…</translation>
    </message>
    <message>
        <source>P&amp;lan…</source>
        <translation>&amp;Plan…</translation>
    </message>
    <message>
        <source>&amp;Compare studies…</source>
        <translation>Studien &amp;vergleichen…</translation>
    </message>
    <message>
        <source>&amp;Hide consumption until the discards are settled</source>
        <translation>Ver&amp;brauch bis zum Ende der Sichtung verbergen</translation>
    </message>
    <message>
        <source>Ctrl+B</source>
        <translation>Ctrl+B</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Runs</source>
        <translation>&amp;Fahrten</translation>
    </message>
    <message>
        <source>Ctrl+1</source>
        <translation>Ctrl+1</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>Fa&amp;rben</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>&amp;Large text</source>
        <translation>&amp;Große Schrift</translation>
    </message>
    <message>
        <source>Ctrl+Shift+L</source>
        <translation>Ctrl+Shift+L</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>&amp;Vollbild</translation>
    </message>
    <message>
        <source>F11</source>
        <translation>F11</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>Ctrl+F1</source>
        <translation>Ctrl+F1</translation>
    </message>
    <message>
        <source>&amp;About Bothways</source>
        <translation>Ü&amp;ber Bothways</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Fahrten</translation>
    </message>
    <message>
        <source>Hide consumption</source>
        <translation>Verbrauch verbergen</translation>
    </message>
    <message>
        <source>Properties</source>
        <translation>Eigenschaften</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importieren</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportieren</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Noch keine</translation>
    </message>
    <message>
        <source>Open a study</source>
        <translation>Studie öffnen</translation>
    </message>
    <message>
        <source>New study</source>
        <translation>Neue Studie</translation>
    </message>
    <message>
        <source>Import a run sheet</source>
        <translation>Fahrtenblatt importieren</translation>
    </message>
    <message>
        <source>&amp;Print the report…</source>
        <translation>Bericht dr&amp;ucken…</translation>
    </message>
    <message>
        <source>R&amp;oadside mode</source>
        <translation>&amp;Vor Ort</translation>
    </message>
    <message>
        <source>F9</source>
        <translation>F9</translation>
    </message>
    <message>
        <source>One page for the companion in the passenger seat (F9)</source>
        <translation>Eine Seite für alle, die auf dem Beifahrersitz mitschreiben (F9)</translation>
    </message>
    <message>
        <source>A run was under way at the roadside when this study was closed.</source>
        <translation>Als diese Studie geschlossen wurde, war vor Ort eine Fahrt unterwegs.</translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation>Damit weitermachen</translation>
    </message>
    <message>
        <source>Recordings</source>
        <translation>Aufzeichnungen</translation>
    </message>
    <message>
        <source>Import a re&amp;cording…</source>
        <translation>Aufzeichnun&amp;g importieren…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+I</source>
        <translation>Ctrl+Shift+I</translation>
    </message>
    <message>
        <source>All recordin&amp;gs…</source>
        <translation>&amp;Alle Aufzeichnungen…</translation>
    </message>
    <message>
        <source>&amp;Handbook</source>
        <translation>&amp;Handbuch</translation>
    </message>
    <message>
        <source>The handbook, at the page for where you are (F1)</source>
        <translation>Das Handbuch, auf der Seite zu dem, wo Sie gerade sind (F1)</translation>
    </message>
    <message>
        <source>&amp;Names in all runs…</source>
        <translation>&amp;Namen in allen Fahrten…</translation>
    </message>
    <message>
        <source>A run was being typed when this study was last open. Go on with it.</source>
        <translation>Als diese Studie zuletzt offen war, wurde gerade eine Fahrt eingetippt. Machen Sie damit weiter.</translation>
    </message>
    <message>
        <source>This study is open for reading: it shows what was in the file when it was opened, and nothing in it can be changed.</source>
        <translation>Diese Studie ist zum Lesen geöffnet: Sie zeigt, was beim Öffnen in der Datei stand, und nichts darin lässt sich ändern.</translation>
    </message>
    <message>
        <source>Save the report as PD&amp;F…</source>
        <translation>Bericht als PD&amp;F speichern…</translation>
    </message>
    <message>
        <source>Save a cop&amp;y…</source>
        <translation>&amp;Kopie speichern…</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>A&amp;usschneiden</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>Copy what is selected, for a spreadsheet or for another study</source>
        <translation>Das Ausgewählte kopieren, für eine Tabellenkalkulation oder eine andere Studie</translation>
    </message>
    <message>
        <source>P&amp;aste</source>
        <translation>Einfü&amp;gen</translation>
    </message>
    <message>
        <source>Paste runs that were copied here or in a spreadsheet, with the header of a run sheet</source>
        <translation>Fahrten einfügen, die hier oder in einer Tabellenkalkulation kopiert wurden, mit der Kopfzeile eines Fahrtenblatts</translation>
    </message>
    <message>
        <source>&amp;Switch the configuration</source>
        <translation>Konfiguration &amp;wechseln</translation>
    </message>
    <message>
        <source>F8</source>
        <translation>F8</translation>
    </message>
    <message>
        <source>The run that is being typed, or a new one, is in the other configuration (F8)</source>
        <translation>Die Fahrt, die gerade eingegeben wird, oder eine neue ist in der anderen Konfiguration (F8)</translation>
    </message>
    <message>
        <source>This study is open for reading only.</source>
        <translation>Diese Studie ist nur zum Lesen geöffnet.</translation>
    </message>
    <message>
        <source>This would show the consumption, which is hidden until the discards are settled.</source>
        <translation>Das würde den Verbrauch zeigen, der bis zum Ende der Sichtung verborgen ist.</translation>
    </message>
    <message>
        <source>%1 (for reading only) – Bothways</source>
        <extracomment>the title of the window: the study&apos;s name</extracomment>
        <translation>%1 (nur zum Lesen) – Bothways</translation>
    </message>
    <message>
        <source>Show the consumption?</source>
        <translation>Den Verbrauch zeigen?</translation>
    </message>
    <message numerus="yes">
        <source>%n finding(s) are not answered yet. Once the result is known, it can no longer be ruled out that it chose the runs.</source>
        <translation>
            <numerusform>%n Befund ist noch nicht beantwortet. Ist das Ergebnis erst bekannt, lässt sich nicht mehr ausschließen, dass es die Fahrten ausgewählt hat.</numerusform>
            <numerusform>%n Befunde sind noch nicht beantwortet. Ist das Ergebnis erst bekannt, lässt sich nicht mehr ausschließen, dass es die Fahrten ausgewählt hat.</numerusform>
        </translation>
    </message>
    <message>
        <source>Go through the &amp;findings</source>
        <translation>Die &amp;Befunde durchgehen</translation>
    </message>
    <message>
        <source>&amp;Show it all the same</source>
        <translation>Trotzdem &amp;zeigen</translation>
    </message>
    <message>
        <source>%1 is open in another window or program, which may change it. Close it there, or open it for reading here.</source>
        <translation>%1 ist in einem anderen Fenster oder Programm offen, das es ändern kann. Dort schließen oder hier zum Lesen öffnen.</translation>
    </message>
    <message>
        <source>%1 may not be changed. It can be opened for reading.</source>
        <translation>%1 darf nicht geändert werden. Zum Lesen lässt es sich öffnen.</translation>
    </message>
    <message>
        <source>&amp;Open for reading</source>
        <translation>Zum &amp;Lesen öffnen</translation>
    </message>
    <message>
        <source>&amp;Import it as a recording…</source>
        <translation>Als Aufzeichnung &amp;importieren…</translation>
    </message>
    <message>
        <source>Rec&amp;ord</source>
        <translation>Auf&amp;zeichnen</translation>
    </message>
    <message>
        <source>&amp;Rig…</source>
        <translation>&amp;Instrumente…</translation>
    </message>
    <message>
        <source>The instruments of the car: set them up, try them, calibrate them</source>
        <translation>Die Instrumente des Wagens: einrichten, ausprobieren, abgleichen</translation>
    </message>
    <message>
        <source>&amp;Start recording</source>
        <translation>Aufzeichnung &amp;beginnen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+R</source>
        <translation>Ctrl+Shift+R</translation>
    </message>
    <message>
        <source>Record the instruments into this study (Ctrl+Shift+R)</source>
        <translation>Die Instrumente in diese Studie aufzeichnen (Strg+Umschalt+R)</translation>
    </message>
    <message>
        <source>S&amp;top recording</source>
        <translation>Aufzeichnung be&amp;enden</translation>
    </message>
    <message>
        <source>Re&amp;hearse with the demo drive</source>
        <translation>Mit der Demofahrt ü&amp;ben</translation>
    </message>
    <message>
        <source>An invented drive, twenty times as fast, into a copy of the demo study</source>
        <translation>Eine erfundene Fahrt, zwanzigmal so schnell, in eine Kopie der Demostudie</translation>
    </message>
    <message>
        <source>packing the recording…</source>
        <translation>Aufzeichnung wird gepackt…</translation>
    </message>
    <message>
        <source>No rig is set up yet: say which instruments the car has, and try them.</source>
        <translation>Noch sind keine Instrumente eingerichtet: sagen, welche der Wagen hat, und sie ausprobieren.</translation>
    </message>
    <message>
        <source>Choose the rig to record with.</source>
        <translation>Die Instrumente wählen, mit denen aufgezeichnet wird.</translation>
    </message>
    <message>
        <source>Recording with the rig “%1”. Whatever is recorded is in the study at once.</source>
        <translation>Es wird mit den Instrumenten „%1“ aufgezeichnet. Was aufgezeichnet ist, steht sofort in der Studie.</translation>
    </message>
    <message>
        <source>&amp;Watch it</source>
        <translation>&amp;Zusehen</translation>
    </message>
    <message>
        <source>The recording is kept in the study.</source>
        <translation>Die Aufzeichnung ist in der Studie.</translation>
    </message>
    <message>
        <source>Stop the recording?</source>
        <translation>Aufzeichnung beenden?</translation>
    </message>
    <message>
        <source>The instruments are being recorded. Going on stops that; all that was recorded is kept.</source>
        <translation>Die Instrumente werden aufgezeichnet. Wer weitergeht, beendet das; alles Aufgezeichnete bleibt.</translation>
    </message>
    <message>
        <source>&amp;Go on recording</source>
        <translation>&amp;Weiter aufzeichnen</translation>
    </message>
    <message>
        <source>&amp;Stop and go on</source>
        <translation>&amp;Beenden und weiter</translation>
    </message>
    <message>
        <source>A rehearsal: the study is a copy of the demo, the drive is invented and goes twenty times as fast. Press Start when the road speed holds 90 km/h.</source>
        <translation>Eine Übung: Die Studie ist eine Kopie der Demostudie, die Fahrt ist erfunden und läuft zwanzigmal so schnell. Start drücken, wenn die Geschwindigkeit 90 km/h hält.</translation>
    </message>
    <message>
        <source>The recording %1 had not been stopped. All of it up to the last second, %2, is in the study.</source>
        <translation>Die Aufzeichnung %1 war nicht beendet worden. Alles bis zur letzten Sekunde, %2, ist in der Studie.</translation>
    </message>
    <message>
        <source>Ctrl+Shift+E</source>
        <translation>Ctrl+Shift+E</translation>
    </message>
    <message>
        <source>Stop, and pack what was recorded (Ctrl+Shift+E)</source>
        <translation>Beenden und das Aufgezeichnete packen (Strg+Umschalt+E)</translation>
    </message>
    <message>
        <source>&amp;Open the evidence</source>
        <translation>Beleg ö&amp;ffnen</translation>
    </message>
    <message>
        <source>The photo or the clip for which a chosen run was discarded</source>
        <translation>Das Foto oder der Film, dessentwegen eine gewählte Fahrt verworfen wurde</translation>
    </message>
    <message>
        <source>&amp;Walk-round…</source>
        <translation>&amp;Rundgang…</translation>
    </message>
    <message>
        <source>What is looked at before a block: the list, and what is in order now</source>
        <translation>Was vor einem Block angesehen wird: die Liste, und was jetzt in Ordnung ist</translation>
    </message>
    <message>
        <source>&amp;Pages of the result</source>
        <translation>&amp;Seiten des Ergebnisses</translation>
    </message>
    <message>
        <source>In a &amp;window of its own</source>
        <translation>In einem eigenen &amp;Fenster</translation>
    </message>
    <message>
        <source>&amp;Import it into a new study…</source>
        <translation>In eine neue Studie &amp;importieren…</translation>
    </message>
    <message>
        <source>Count again</source>
        <comment>on the tool bar</comment>
        <translation>Werten</translation>
    </message>
    <message>
        <source>Tie</source>
        <comment>on the tool bar</comment>
        <translation>Verbinden</translation>
    </message>
    <message>
        <source>Untie</source>
        <comment>on the tool bar</comment>
        <translation>Lösen</translation>
    </message>
    <message numerus="yes">
        <source>The recording %1 and %n more had not been stopped. All of them up to their last seconds are in the study.</source>
        <translation>
            <numerusform>Die Aufzeichnung %1 und %n weitere waren nicht beendet worden. Alle sind bis zu ihrer letzten Sekunde in der Studie.</numerusform>
            <numerusform>Die Aufzeichnung %1 und %n weitere waren nicht beendet worden. Alle sind bis zu ihrer letzten Sekunde in der Studie.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::MessageBar</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close the message</source>
        <translation>Die Meldung schließen</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <extracomment>what went wrong, and where</extracomment>
        <translation>%1 (%2)</translation>
    </message>
    <message numerus="yes">
        <source>There are %n more.</source>
        <translation>
            <numerusform>Es gibt %n weitere Stelle.</numerusform>
            <numerusform>Es gibt %n weitere Stellen.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::NotCheckedDialog</name>
    <message>
        <source>Not checked</source>
        <translation>Nicht geprüft</translation>
    </message>
    <message>
        <source>What a rule could not look at, it has not passed.</source>
        <translation>Was eine Regel nicht ansehen konnte, hat sie auch nicht für gut befunden.</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Fahrten</translation>
    </message>
</context>
<context>
    <name>bothways::app::PlanPage</name>
    <message>
        <source>A is the baseline, B the device. Equal neighbours are one block.</source>
        <translation>A ist die Referenz, B das Gerät. Gleiche Nachbarn sind ein Block.</translation>
    </message>
    <message>
        <source>Sequence</source>
        <translation>Folge</translation>
    </message>
    <message>
        <source>Pairs a block</source>
        <translation>Paare je Block</translation>
    </message>
    <message>
        <source> min</source>
        <translation> min</translation>
    </message>
    <message>
        <source>Time for a pair</source>
        <translation>Zeit für ein Paar</translation>
    </message>
    <message>
        <source>Time for a switch</source>
        <translation>Zeit für einen Wechsel</translation>
    </message>
    <message>
        <source> km</source>
        <translation> km</translation>
    </message>
    <message>
        <source>Length of the stretch</source>
        <translation>Länge der Messstrecke</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>How much one pair differs from the next when nothing changes. 1 % is a careful day (common practice, no source).</source>
        <translation>Wie sehr sich ein Paar vom nächsten unterscheidet, wenn sich nichts ändert. 1&#xa0;% ist ein sorgfältiger Tag (übliche Praxis, ohne Quelle).</translation>
    </message>
    <message>
        <source>Noise of a pair</source>
        <translation>Rauschen eines Paars</translation>
    </message>
    <message>
        <source>Noise of this study</source>
        <translation>Rauschen dieser Studie</translation>
    </message>
    <message>
        <source>Confidence</source>
        <translation>Vertrauensniveau</translation>
    </message>
    <message>
        <source>Of 100 such days, how many should show the effect.</source>
        <translation>Wie viele von 100 solchen Tagen den Effekt zeigen sollen.</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Trennschärfe</translation>
    </message>
    <message>
        <source>Find the pairs for an effect of</source>
        <translation>Paare finden für einen Effekt von</translation>
    </message>
    <message>
        <source>Effect to be seen</source>
        <translation>Gesuchter Effekt</translation>
    </message>
    <message>
        <source> h</source>
        <translation> h</translation>
    </message>
    <message>
        <source>Hours there are</source>
        <translation>Verfügbare Stunden</translation>
    </message>
    <message>
        <source>Tie this plan to the study</source>
        <translation>Diesen Plan an die Studie binden</translation>
    </message>
    <message>
        <source>Until it is fulfilled the verdict says interim, and looks at it are on record.</source>
        <translation>Bis er erfüllt ist, heißt das Urteil vorläufig, und jeder Blick darauf wird festgehalten.</translation>
    </message>
    <message>
        <source>Run card…</source>
        <translation>Fahrtenkarte…</translation>
    </message>
    <message>
        <source>What fits into the hours, and what it is weak against</source>
        <translation>Was in die Stunden passt und wogegen es schwach ist</translation>
    </message>
    <message>
        <source>No plan: %1.</source>
        <translation>Kein Plan: %1.</translation>
    </message>
    <message>
        <source>Simulating days…</source>
        <translation>Tage werden simuliert…</translation>
    </message>
    <message>
        <source>sequence</source>
        <translation>Folge</translation>
    </message>
    <message>
        <source>pairs a block</source>
        <translation>Paare je Block</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Noise of several studies…</source>
        <translation>Rauschen mehrerer Studien…</translation>
    </message>
    <message numerus="yes">
        <source>Pooled from %1 (%n degree(s) of freedom).</source>
        <translation>
            <numerusform>Zusammengefasst aus %1 (%n Freiheitsgrad).</numerusform>
            <numerusform>Zusammengefasst aus %1 (%n Freiheitsgrade).</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <comment>between names of studies</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>The interval will reach %1 % to either side; an effect of %2 % or more would be shown by %3 of 100 such days.</source>
        <translation>Das Intervall wird nach beiden Seiten %1&#xa0;% weit reichen; einen Effekt von %2&#xa0;% oder mehr würden %3 von 100 solchen Tagen zeigen.</translation>
    </message>
    <message>
        <source>finds, %</source>
        <translation>findet, %</translation>
    </message>
    <message>
        <source>With this vehicle&apos;s noise known from those days the interval would reach %1 %.</source>
        <translation>Mit dem aus jenen Tagen bekannten Rauschen dieses Fahrzeugs würde das Intervall %1&#xa0;% weit reichen.</translation>
    </message>
    <message>
        <source>This study is open for reading only.</source>
        <translation>Diese Studie ist nur zum Lesen geöffnet.</translation>
    </message>
</context>
<context>
    <name>bothways::app::PlotView</name>
    <message>
        <source>The file %1 cannot be written.</source>
        <translation>Die Datei %1 kann nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>The file %1 cannot be written: %2.</source>
        <translation>Die Datei %1 kann nicht geschrieben werden: %2.</translation>
    </message>
    <message>
        <source>The file %1 needs an ending that says its kind: png, svg, pdf or csv.</source>
        <translation>Die Datei %1 braucht eine Endung, die ihre Art nennt: png, svg, pdf oder csv.</translation>
    </message>
    <message>
        <source>Picture (*.png)</source>
        <translation>Bild (*.png)</translation>
    </message>
    <message>
        <source>Drawing (*.svg)</source>
        <translation>Zeichnung (*.svg)</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Numbers (*.csv)</source>
        <translation>Zahlen (*.csv)</translation>
    </message>
    <message>
        <source>Save picture or numbers</source>
        <translation>Bild oder Zahlen speichern</translation>
    </message>
    <message>
        <source>Copy &amp;picture</source>
        <translation>&amp;Bild kopieren</translation>
    </message>
    <message>
        <source>Copy &amp;numbers</source>
        <translation>&amp;Zahlen kopieren</translation>
    </message>
    <message>
        <source>&amp;Save picture or numbers…</source>
        <translation>Bild oder Zahlen &amp;speichern…</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <source>Show &amp;all</source>
        <translation>&amp;Alles zeigen</translation>
    </message>
</context>
<context>
    <name>bothways::app::PowerPlot</name>
    <message>
        <source>a true effect of %1 % would be shown by %2 of 100 such days</source>
        <translation>einen wahren Effekt von %1&#xa0;% würden %2 von 100 solchen Tagen zeigen</translation>
    </message>
    <message>
        <source> %1 %</source>
        <translation> %1 %</translation>
    </message>
    <message>
        <source>true effect, per cent</source>
        <translation>wahrer Effekt, Prozent</translation>
    </message>
    <message>
        <source>days in 100 that would show it</source>
        <translation>von 100 Tagen würden ihn zeigen</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Trennschärfe</translation>
    </message>
    <message>
        <source>An effect of %1 % would be shown by %2 of 100 such days.</source>
        <translation>Einen Effekt von %1&#xa0;% würden %2 von 100 solchen Tagen zeigen.</translation>
    </message>
</context>
<context>
    <name>bothways::app::Preferences</name>
    <message>
        <source>en</source>
        <comment>language of these texts</comment>
        <extracomment>not a word: the tag of the language that these texts are in, like de</extracomment>
        <translation>de</translation>
    </message>
</context>
<context>
    <name>bothways::app::PreferencesDialog</name>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Show consumption in</source>
        <translation>Verbrauch anzeigen in</translation>
    </message>
    <message>
        <source>Enter consumption in</source>
        <translation>Verbrauch eingeben in</translation>
    </message>
    <message>
        <source>Distance and speed</source>
        <translation>Strecke und Geschwindigkeit</translation>
    </message>
    <message>
        <source>km, km/h</source>
        <translation>km, km/h</translation>
    </message>
    <message>
        <source>miles, mph</source>
        <translation>Meilen, mph</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Large text</source>
        <translation>Große Schrift</translation>
    </message>
    <message>
        <source>Units change what is shown, never what is stored. The language changes with the next start.</source>
        <translation>Einheiten ändern nur, was angezeigt wird, nie, was gespeichert ist. Die Sprache wechselt mit dem nächsten Start.</translation>
    </message>
    <message>
        <source>Volume of alarms</source>
        <translation>Lautstärke der Alarme</translation>
    </message>
    <message>
        <source>Hear it</source>
        <translation>Anhören</translation>
    </message>
</context>
<context>
    <name>bothways::app::RecordingImportDialog</name>
    <message>
        <source>Import %1</source>
        <translation>%1 importieren</translation>
    </message>
    <message>
        <source>%1 MB/s</source>
        <translation>%1&#xa0;MB/s</translation>
    </message>
    <message>
        <source>Looking at the file…</source>
        <translation>Die Datei wird angesehen…</translation>
    </message>
    <message>
        <source>Importing the recording</source>
        <translation>Die Aufzeichnung wird importiert</translation>
    </message>
    <message>
        <source>C&amp;ut it into runs…</source>
        <translation>In &amp;Fahrten schneiden…</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importieren</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Anhalten</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>It &amp;belongs to run</source>
        <translation>Sie &amp;gehört zur Fahrt</translation>
    </message>
    <message>
        <source>The run it belongs to</source>
        <translation>Die Fahrt, zu der sie gehört</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <extracomment>number, configuration, direction of a run</extracomment>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>It is of a &amp;whole drive, to be cut into runs</source>
        <translation>Sie ist von einer ganzen Ausfahrt und soll in Fahrten ge&amp;schnitten werden</translation>
    </message>
    <message>
        <source>This file cannot be taken for a recording.</source>
        <translation>Diese Datei lässt sich nicht als Aufzeichnung lesen.</translation>
    </message>
    <message>
        <source>What the columns are is kept from an earlier recording with this header.</source>
        <translation>Was die Spalten sind, ist von einer früheren Aufzeichnung mit dieser Kopfzeile gemerkt.</translation>
    </message>
    <message>
        <source>Stopped: the study is as it was.</source>
        <translation>Angehalten: Die Studie ist, wie sie war.</translation>
    </message>
    <message>
        <source>The study is as it was.</source>
        <translation>Die Studie ist, wie sie war.</translation>
    </message>
</context>
<context>
    <name>bothways::app::RecordingsDesk</name>
    <message>
        <source>Import a recording</source>
        <translation>Aufzeichnung importieren</translation>
    </message>
    <message>
        <source>Recordings (*.csv *.txt *.tsv *.gpx *.nmea *.log);;All files (*)</source>
        <translation>Aufzeichnungen (*.csv *.txt *.tsv *.gpx *.nmea *.log);;Alle Dateien (*)</translation>
    </message>
    <message numerus="yes">
        <source>%n part(s) of the recording became runs.</source>
        <translation>
            <numerusform>%n Teil der Aufzeichnung wurde zu einer Fahrt.</numerusform>
            <numerusform>%n Teile der Aufzeichnung wurden zu Fahrten.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::RecordingsDialog</name>
    <message>
        <source>Recordings in the study</source>
        <translation>Aufzeichnungen in der Studie</translation>
    </message>
    <message>
        <source>The study file is %1 smaller.</source>
        <translation>Die Studiendatei ist um %1 kleiner.</translation>
    </message>
    <message>
        <source>Recording</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Rows</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Fahrten</translation>
    </message>
    <message>
        <source>C&amp;ut into runs…</source>
        <translation>In &amp;Fahrten schneiden…</translation>
    </message>
    <message>
        <source>&amp;Drop…</source>
        <translation>&amp;Entfernen…</translation>
    </message>
    <message>
        <source>&amp;Shrink the study file…</source>
        <translation>Studiendatei &amp;verkleinern…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>no clock</source>
        <translation>keine Uhr</translation>
    </message>
    <message>
        <source>not yet cut</source>
        <translation>noch nicht geschnitten</translation>
    </message>
    <message>
        <source>No run has a part of it.</source>
        <translation>Keine Fahrt hat einen Teil davon.</translation>
    </message>
    <message>
        <source>Runs that have a part of it: %1. They stay, with all that was typed.</source>
        <translation>Fahrten, die einen Teil davon haben: %1. Sie bleiben, mit allem, was eingegeben wurde.</translation>
    </message>
    <message>
        <source>Drop %1?</source>
        <translation>%1 entfernen?</translation>
    </message>
    <message>
        <source>Undo brings it back, until the study file is shrunk; its %1 are freed only then.</source>
        <translation>„Rückgängig“ bringt sie wieder, bis die Studiendatei verkleinert wird; erst dann werden %1 frei.</translation>
    </message>
    <message>
        <source>Drop it</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>No recording was dropped: the study file cannot become smaller.</source>
        <translation>Keine Aufzeichnung wurde entfernt: Die Studiendatei kann nicht kleiner werden.</translation>
    </message>
    <message>
        <source>Make the study file %1 smaller?</source>
        <translation>Die Studiendatei um %1 verkleinern?</translation>
    </message>
    <message>
        <source>Recordings that were dropped, or whose import was undone, cannot be brought back after it. Runs stay.</source>
        <translation>Aufzeichnungen, die entfernt wurden oder deren Import rückgängig gemacht wurde, lassen sich danach nicht wiederbringen. Fahrten bleiben.</translation>
    </message>
    <message>
        <source>Shrink it</source>
        <translation>Verkleinern</translation>
    </message>
    <message>
        <source>Making the study file smaller…</source>
        <translation>Die Studiendatei wird verkleinert…</translation>
    </message>
    <message>
        <source>This study is open for reading only.</source>
        <translation>Diese Studie ist nur zum Lesen geöffnet.</translation>
    </message>
</context>
<context>
    <name>bothways::app::RecordingsPanel</name>
    <message>
        <source>Import a recording…</source>
        <translation>Aufzeichnung importieren…</translation>
    </message>
    <message>
        <source>All recordings…</source>
        <translation>Alle Aufzeichnungen…</translation>
    </message>
    <message>
        <source>Cut a recording into runs, drop one, or shrink the study file</source>
        <translation>Eine Aufzeichnung in Fahrten schneiden, eine entfernen oder die Studiendatei verkleinern</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <extracomment>a run in a list: number, configuration, direction</extracomment>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>Run %1: %2</source>
        <translation>Fahrt %1: %2</translation>
    </message>
    <message>
        <source>Run %1 has no recording; another run is shown.</source>
        <translation>Fahrt %1 hat keine Aufzeichnung; zu sehen ist eine andere Fahrt.</translation>
    </message>
    <message>
        <source>Channels that tell the consumption are hidden with it.</source>
        <translation>Kanäle, die den Verbrauch verraten, sind mit ihm verborgen.</translation>
    </message>
    <message>
        <source>This study is open for reading only.</source>
        <translation>Diese Studie ist nur zum Lesen geöffnet.</translation>
    </message>
</context>
<context>
    <name>bothways::app::RenameDialog</name>
    <message>
        <source>Names in all runs</source>
        <translation>Namen in allen Fahrten</translation>
    </message>
    <message>
        <source>A name that was mistyped is changed in every run at once. The history keeps what it was.</source>
        <translation>Ein vertippter Name wird in allen Fahrten auf einmal geändert. Der Verlauf hält fest, wie er lautete.</translation>
    </message>
    <message>
        <source>Rename</source>
        <translation>Umbenennen</translation>
    </message>
    <message>
        <source>Configuration “%1”</source>
        <translation>Konfiguration „%1“</translation>
    </message>
    <message>
        <source>Direction “%1”</source>
        <translation>Richtung „%1“</translation>
    </message>
</context>
<context>
    <name>bothways::app::ReportDesk</name>
    <message>
        <source>%1 cannot be written: %2.</source>
        <translation>%1 kann nicht geschrieben werden: %2.</translation>
    </message>
    <message>
        <source>Web page (*.html)</source>
        <translation>Webseite (*.html)</translation>
    </message>
    <message>
        <source>The page is in %1.</source>
        <translation>Die Seite ist in %1.</translation>
    </message>
    <message>
        <source>Save the report</source>
        <translation>Bericht speichern</translation>
    </message>
    <message>
        <source>PDF on A4 paper (*.pdf)</source>
        <translation>PDF auf A4-Papier (*.pdf)</translation>
    </message>
    <message>
        <source>PDF on Letter paper (*.pdf)</source>
        <translation>PDF auf Letter-Papier (*.pdf)</translation>
    </message>
    <message>
        <source>Save the report as PDF</source>
        <translation>Bericht als PDF speichern</translation>
    </message>
    <message>
        <source>The report is in %1.</source>
        <translation>Der Bericht ist in %1.</translation>
    </message>
    <message>
        <source>The report could not be printed on %1.</source>
        <translation>Der Bericht konnte auf %1 nicht gedruckt werden.</translation>
    </message>
    <message>
        <source>Save the run card</source>
        <translation>Fahrtenkarte speichern</translation>
    </message>
    <message>
        <source>run card</source>
        <translation>Fahrtenkarte</translation>
    </message>
    <message>
        <source>Studies to take the noise from</source>
        <translation>Studien, aus denen das Rauschen übernommen wird</translation>
    </message>
    <message numerus="yes">
        <source>Reading %n study(s)…</source>
        <translation>
            <numerusform>Lese %n Studie …</numerusform>
            <numerusform>Lese %n Studien …</numerusform>
        </translation>
    </message>
    <message>
        <source>The plan takes its noise from %1.</source>
        <translation>Der Plan nimmt sein Rauschen aus %1.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between names of studies</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>Studies and run sheets (*.bothways *.csv *.tsv *.txt *.xlsx *.ods);;All files (*)</source>
        <translation>Studien und Fahrtenblätter (*.bothways *.csv *.tsv *.txt *.xlsx *.ods);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>&amp;Open it</source>
        <translation>&amp;Öffnen</translation>
    </message>
</context>
<context>
    <name>bothways::app::ResultPage</name>
    <message>
        <source>Spoiled runs count</source>
        <translation>Unbrauchbare Fahrten werden gewertet</translation>
    </message>
    <message>
        <source>&amp;Margin: I care about</source>
        <translation>&amp;Relevanzschwelle</translation>
    </message>
    <message>
        <source>&amp;Confidence</source>
        <translation>&amp;Vertrauensniveau</translation>
    </message>
    <message>
        <source>Margin, the smallest effect that you care about, in per cent</source>
        <translation>Relevanzschwelle, der kleinste Effekt, auf den es Ihnen ankommt, in Prozent</translation>
    </message>
    <message>
        <source>Confidence of the interval, in per cent</source>
        <translation>Vertrauensniveau des Intervalls, in Prozent</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>none</source>
        <comment>no claim</comment>
        <translation>keine</translation>
    </message>
    <message>
        <source>C&amp;laim (− is less)</source>
        <translation>Be&amp;hauptung (− heißt weniger)</translation>
    </message>
    <message>
        <source>What someone says the device does, in per cent, minus is less</source>
        <translation>Was jemand dem Gerät zuschreibt, in Prozent, Minus heißt weniger</translation>
    </message>
    <message>
        <source>What a seller or a friend says: −5 for five per cent less. The verdict says whether the runs bear it out.</source>
        <translation>Was ein Verkäufer oder ein Freund sagt: −5 für fünf Prozent weniger. Das Urteil sagt, ob die Fahrten es bestätigen.</translation>
    </message>
    <message>
        <source>Each day for itself</source>
        <translation>Jeder Tag für sich</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>pairs</source>
        <translation>Paare</translation>
    </message>
    <message>
        <source>effect</source>
        <translation>Effekt</translation>
    </message>
    <message>
        <source>%1 interval</source>
        <translation>%1-Intervall</translation>
    </message>
    <message>
        <source>Each day in numbers</source>
        <translation>Jeder Tag in Zahlen</translation>
    </message>
    <message numerus="yes">
        <source>%n more…</source>
        <translation>
            <numerusform>%n weitere …</numerusform>
            <numerusform>%n weitere …</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::ResultTabs</name>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Companions</source>
        <translation>Gegenproben</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Ledger</source>
        <translation>Bilanz</translation>
    </message>
</context>
<context>
    <name>bothways::app::ResultView</name>
    <message>
        <source>The result is being computed anew.</source>
        <translation>Das Ergebnis wird neu berechnet.</translation>
    </message>
    <message>
        <source>There is no result yet.</source>
        <translation>Es gibt noch kein Ergebnis.</translation>
    </message>
</context>
<context>
    <name>bothways::app::RigDialog</name>
    <message>
        <source>Rig: the instruments of the car</source>
        <translation>Die Instrumente des Wagens</translation>
    </message>
    <message>
        <source>Rigs</source>
        <translation>Sätze von Instrumenten</translation>
    </message>
    <message>
        <source>Name of the rig</source>
        <translation>Name des Satzes</translation>
    </message>
    <message>
        <source>Rig na&amp;me</source>
        <translation>Na&amp;me des Satzes</translation>
    </message>
    <message>
        <source>Ne&amp;w</source>
        <translation>Ne&amp;u</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>S&amp;peichern</translation>
    </message>
    <message>
        <source>De&amp;lete</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instrumente</translation>
    </message>
    <message>
        <source>A&amp;dd an instrument</source>
        <translation>&amp;Instrument dazu</translation>
    </message>
    <message>
        <source>Rem&amp;ove it</source>
        <translation>Instrument &amp;weg</translation>
    </message>
    <message>
        <source>Tr&amp;y the rig</source>
        <translation>Ausprobieren (&amp;Y)</translation>
    </message>
    <message>
        <source>What this instrument sends becomes its list, to be named and scaled</source>
        <translation>Was dieses Instrument sendet, wird seine Liste, zum Benennen und Umrechnen</translation>
    </message>
    <message>
        <source>Cali&amp;brate…</source>
        <translation>Ab&amp;gleichen…</translation>
    </message>
    <message>
        <source>&amp;Record with it</source>
        <translation>Damit aufzei&amp;chnen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Open a study that is not being recorded into first.</source>
        <translation>Zuerst eine Studie öffnen, in die nicht aufgezeichnet wird.</translation>
    </message>
    <message>
        <source>car</source>
        <translation>Wagen</translation>
    </message>
    <message>
        <source>Name each instrument, say what it is and where, then try it.</source>
        <translation>Jedes Instrument benennen, sagen, was und wo es ist, dann ausprobieren.</translation>
    </message>
    <message>
        <source>board</source>
        <translation>Platine</translation>
    </message>
    <message>
        <source>board %1</source>
        <translation>Platine %1</translation>
    </message>
    <message>
        <source>The rig needs a name.</source>
        <translation>Der Satz braucht einen Namen.</translation>
    </message>
    <message>
        <source>The rig “%1” is kept.</source>
        <translation>Der Satz „%1“ ist gespeichert.</translation>
    </message>
    <message>
        <source>The rig “%1” is deleted. Studies that were recorded with it keep theirs.</source>
        <translation>Der Satz „%1“ ist gelöscht. Studien, die damit aufgezeichnet wurden, behalten ihren.</translation>
    </message>
    <message>
        <source>Stop tr&amp;ying</source>
        <translation>Probe beenden (&amp;Y)</translation>
    </message>
    <message>
        <source>The instrument has sent nothing yet.</source>
        <translation>Das Instrument hat noch nichts gesendet.</translation>
    </message>
    <message>
        <source>Calibrate</source>
        <translation>Abgleichen</translation>
    </message>
    <message>
        <source>Which channel of it?</source>
        <translation>Welcher seiner Kanäle?</translation>
    </message>
    <message>
        <source>&amp;Take over these channels</source>
        <translation>Diese Kanäle über&amp;nehmen</translation>
    </message>
</context>
<context>
    <name>bothways::app::RigTrial</name>
    <message>
        <source>What is read</source>
        <translation>Was gelesen wird</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation>Kanal</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>per second</source>
        <translation>je Sekunde</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>Rules that read it</source>
        <translation>Regeln, die ihn lesen</translation>
    </message>
    <message numerus="yes">
        <source>, %n line(s) could not be read</source>
        <translation>
            <numerusform>, %n Zeile war nicht zu lesen</numerusform>
            <numerusform>, %n Zeilen waren nicht zu lesen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (derived)</source>
        <translation>%1 (abgeleitet)</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>none: it is recorded only</source>
        <translation>keine: wird nur aufgezeichnet</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Rules that lack a channel: %1.</source>
        <translation>Regeln, denen ein Kanal fehlt: %1.</translation>
    </message>
    <message>
        <source>This computer has no sound device: alarms are seen, and it beeps if it can.</source>
        <translation>Dieser Rechner hat kein Tongerät: Alarme sind zu sehen, und er piept, wenn er kann.</translation>
    </message>
</context>
<context>
    <name>bothways::app::RoadsidePage</name>
    <message>
        <source>Roadside – %1</source>
        <translation>Vor Ort – %1</translation>
    </message>
    <message>
        <source>Roadside mode</source>
        <translation>Vor Ort</translation>
    </message>
    <message>
        <source>The driver drives, the companion types.</source>
        <translation>Wer fährt, fährt; wer mitfährt, tippt.</translation>
    </message>
    <message>
        <source>⚠ %1</source>
        <extracomment>in front of a sentence that says what is wrong</extracomment>
        <translation>⚠ %1</translation>
    </message>
    <message>
        <source>Run %1</source>
        <translation>Fahrt %1</translation>
    </message>
    <message>
        <source>Next: run %1</source>
        <translation>Als Nächstes: Fahrt %1</translation>
    </message>
    <message>
        <source>block %1 of %2</source>
        <translation>Block %1 von %2</translation>
    </message>
    <message>
        <source>block %1</source>
        <translation>Block %1</translation>
    </message>
    <message>
        <source>pair %1 of %2</source>
        <translation>Paar %1 von %2</translation>
    </message>
    <message>
        <source>Pairs: %1 of %2</source>
        <translation>Paare: %1 von %2</translation>
    </message>
    <message>
        <source>Pairs: %1</source>
        <translation>Paare: %1</translation>
    </message>
    <message>
        <source>%1, %2 more in each block</source>
        <translation>%1, noch %2 in jedem Block</translation>
    </message>
    <message>
        <source>The plan is driven. More runs do no harm.</source>
        <translation>Der Plan ist gefahren. Weitere Fahrten schaden nicht.</translation>
    </message>
    <message>
        <source>The blocks so far are not those of the plan. Going on as after the last run.</source>
        <translation>Die bisherigen Blöcke sind nicht die des Plans. Weiter wie nach der letzten Fahrt.</translation>
    </message>
    <message>
        <source>Nothing is planned and nothing driven yet. Choose what this run is.</source>
        <translation>Noch ist nichts geplant und nichts gefahren. Wählen Sie, was diese Fahrt ist.</translation>
    </message>
    <message>
        <source>Switch to %1 first. Note what was changed.</source>
        <translation>Wechseln Sie zuerst auf %1. Notieren Sie, was geändert wurde.</translation>
    </message>
    <message>
        <source>In run %1 these were on: %2. Have the same on now.</source>
        <translation>In Fahrt %1 war an: %2. Jetzt ebenso einschalten.</translation>
    </message>
    <message>
        <source>Accessories as in every run; windows closed.</source>
        <translation>Nebenverbraucher wie bei jeder Fahrt; Fenster geschlossen.</translation>
    </message>
    <message>
        <source>Configuration</source>
        <translation>Konfiguration</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>A run takes about %1.</source>
        <translation>Eine Fahrt dauert etwa %1.</translation>
    </message>
    <message>
        <source>Press Start when the meter is reset: when already cruising.</source>
        <translation>Drücken Sie „Start“, wenn die Anzeige zurückgesetzt ist: erst bei gleichmäßiger Fahrt.</translation>
    </message>
    <message>
        <source>of about %1</source>
        <translation>von etwa %1</translation>
    </message>
    <message>
        <source>Marks: %1, the last at %2 s</source>
        <translation>Marken: %1, die letzte bei %2&#xa0;s</translation>
    </message>
    <message>
        <source>The meter was reset when already cruising? If not: Discard.</source>
        <translation>Wurde die Anzeige erst bei gleichmäßiger Fahrt zurückgesetzt? Wenn nicht: Verwerfen.</translation>
    </message>
    <message>
        <source>The clock was set back during this run. Its times go on from where they were.</source>
        <translation>Die Uhr wurde während dieser Fahrt zurückgestellt. Ihre Zeiten laufen weiter, wo sie waren.</translation>
    </message>
    <message>
        <source>This run is long over what was expected. Was the end missed?</source>
        <translation>Diese Fahrt dauert viel länger als erwartet. Wurde das Ende verpasst?</translation>
    </message>
    <message>
        <source>%1, %2. Note what happens when it happens.</source>
        <translation>%1, %2. Notieren Sie, was geschieht, wenn es geschieht.</translation>
    </message>
    <message>
        <source>%1 at %2 s</source>
        <translation>%1 bei %2&#xa0;s</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>weggelassen</translation>
    </message>
    <message>
        <source>Duration</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Yes, keep it</source>
        <translation>Ja, behalten</translation>
    </message>
    <message>
        <source>What does the dashboard show, in %1?</source>
        <translation>Was zeigt die Anzeige im Fahrzeug, in %1?</translation>
    </message>
    <message>
        <source>%1 has dropped out. Press its button when it is on again, twice if it stays off.</source>
        <translation>%1 hat abgeschaltet. Drücken Sie die Taste dafür, wenn es wieder an ist, zweimal, wenn es aus bleibt.</translation>
    </message>
    <message>
        <source>%1 drops out in %2, before the end of this run.</source>
        <translation>%1 schaltet in %2 ab, vor dem Ende dieser Fahrt.</translation>
    </message>
    <message>
        <source>%1 would drop out in %2, during the next run. Switch it on anew before Start.</source>
        <translation>%1 würde in %2 abschalten, während der nächsten Fahrt. Schalten Sie es vor dem Start neu ein.</translation>
    </message>
    <message>
        <source>%1: off. Press when switched on</source>
        <translation>%1: aus. Beim Einschalten drücken</translation>
    </message>
    <message>
        <source>%1: on, %2 left</source>
        <translation>%1: an, noch %2</translation>
    </message>
    <message>
        <source>%1: dropped out %2 ago</source>
        <translation>%1: vor %2 abgeschaltet</translation>
    </message>
    <message>
        <source>Discard run %1</source>
        <translation>Fahrt %1 verwerfen</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Verlassen</translation>
    </message>
    <message>
        <source>The moment is noted. What happened?</source>
        <translation>Der Zeitpunkt ist notiert. Was geschah?</translation>
    </message>
    <message>
        <source>Why does run %1 not count? It stays in the list, with the reason.</source>
        <translation>Warum zählt Fahrt %1 nicht? Sie bleibt in der Liste, mit dem Grund.</translation>
    </message>
    <message>
        <source>Run %1 is discarded.</source>
        <translation>Fahrt %1 ist verworfen.</translation>
    </message>
    <message>
        <source>Why does run %1 not count?</source>
        <translation>Warum zählt Fahrt %1 nicht?</translation>
    </message>
    <message>
        <source>Run %1 (%2, %3) was ended %4 after its start, and its consumption is not typed yet.</source>
        <translation>Fahrt %1 (%2, %3) wurde %4 nach ihrem Start beendet, und ihr Verbrauch ist noch nicht eingegeben.</translation>
    </message>
    <message>
        <source>Run %1 (%2, %3) was under way when the program ended. It started %4 ago.</source>
        <translation>Fahrt %1 (%2, %3) war unterwegs, als das Programm endete. Sie begann vor %4.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weitermachen</translation>
    </message>
    <message>
        <source>Discard it, with a reason</source>
        <translation>Verwerfen, mit einem Grund</translation>
    </message>
    <message>
        <source>Forget it</source>
        <translation>Vergessen</translation>
    </message>
    <message>
        <source>The run was forgotten; nothing was written.</source>
        <translation>Die Fahrt wurde vergessen; nichts wurde eingetragen.</translation>
    </message>
    <message>
        <source>Run %1 is under way. Leave all the same? Start and marks are kept.</source>
        <translation>Fahrt %1 ist unterwegs. Trotzdem verlassen? Start und Marken bleiben erhalten.</translation>
    </message>
    <message>
        <source>The consumption of run %1 is not written yet. Leave all the same? What was noted is kept.</source>
        <translation>Der Verbrauch von Fahrt %1 ist noch nicht eingetragen. Trotzdem verlassen? Was notiert wurde, bleibt erhalten.</translation>
    </message>
    <message>
        <source>Stay</source>
        <translation>Bleiben</translation>
    </message>
    <message>
        <source>Which setting has the device in this run?</source>
        <translation>Welche Einstellung hat das Gerät bei dieser Fahrt?</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>Consumption</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>Back</source>
        <comment>take the last digit away</comment>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Run %1 is written.</source>
        <translation>Fahrt %1 ist eingetragen.</translation>
    </message>
    <message>
        <source>Other, in words</source>
        <translation>Anderes, in Worten</translation>
    </message>
    <message>
        <source>Back, it counts</source>
        <translation>Zurück, sie zählt</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Worte</translation>
    </message>
    <message>
        <source>Taken back: %1.</source>
        <translation>Zurückgenommen: %1.</translation>
    </message>
    <message>
        <source>Braked</source>
        <translation>Gebremst</translation>
    </message>
    <message>
        <source>Overtook</source>
        <translation>Überholt</translation>
    </message>
    <message>
        <source>Overtaken</source>
        <translation>Überholt worden</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>Regen</translation>
    </message>
    <message>
        <source>Roadworks</source>
        <translation>Baustelle</translation>
    </message>
    <message>
        <source>Animal on the road</source>
        <translation>Tier auf der Straße</translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation>%1 übernehmen</translation>
    </message>
    <message>
        <source>Keep %1</source>
        <translation>%1 behalten</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instrumente</translation>
    </message>
    <message>
        <source>Heard</source>
        <translation>Gehört</translation>
    </message>
    <message>
        <source>Discard and drive again</source>
        <translation>Verwerfen und noch einmal</translation>
    </message>
    <message>
        <source>Run %1 is discarded: %2. Turn and drive it again.</source>
        <translation>Fahrt %1 ist verworfen: %2. Wenden und noch einmal fahren.</translation>
    </message>
    <message>
        <source>Walk-round</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>Walk-round, %1 of %2: %3, in %4? Nothing typed: it stays open.</source>
        <translation>Rundgang, %1 von %2: %3, in %4? Nichts eingetippt: bleibt offen.</translation>
    </message>
    <message>
        <source>“%1” is no number.</source>
        <translation>„%1“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>Walk-round, %1 of %2: %3. In order?</source>
        <translation>Rundgang, %1 von %2: %3. In Ordnung?</translation>
    </message>
    <message>
        <source>In order</source>
        <translation>In Ordnung</translation>
    </message>
    <message>
        <source>It stays open</source>
        <translation>Bleibt offen</translation>
    </message>
    <message>
        <source>Weather of this block, %1 of %2: %3, in %4? Nothing typed: not known.</source>
        <translation>Wetter dieses Blocks, %1 von %2: %3, in %4? Nichts eingetippt: nicht bekannt.</translation>
    </message>
    <message>
        <source>The weather goes into run %1.</source>
        <translation>Das Wetter kommt in Fahrt %1.</translation>
    </message>
    <message>
        <source>Walk round the car before this block.</source>
        <translation>Vor diesem Block um den Wagen gehen.</translation>
    </message>
    <message>
        <source>This block began without its walk-round.</source>
        <translation>Dieser Block begann ohne seinen Rundgang.</translation>
    </message>
    <message>
        <source>Runs begin and end %1. Start and End do it by hand.</source>
        <translation>Fahrten beginnen und enden %1. Start und Ende tun es von Hand.</translation>
    </message>
</context>
<context>
    <name>bothways::app::RunForm</name>
    <message>
        <source>Run %1</source>
        <translation>Fahrt %1</translation>
    </message>
    <message>
        <source>New run %1</source>
        <translation>Neue Fahrt %1</translation>
    </message>
    <message>
        <source>Save run</source>
        <translation>Fahrt speichern</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Save the run and prepare the next (Enter)</source>
        <translation>Die Fahrt speichern und die nächste vorbereiten (Eingabetaste)</translation>
    </message>
    <message>
        <source>Close the panel (Enter)</source>
        <translation>Das Feld schließen (Eingabetaste)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Davor</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>The run starts now</source>
        <translation>Die Fahrt beginnt jetzt</translation>
    </message>
    <message>
        <source>The run starts now (Ctrl+N)</source>
        <translation>Die Fahrt beginnt jetzt (Strg+N)</translation>
    </message>
    <message>
        <source>On the road</source>
        <translation>Unterwegs</translation>
    </message>
    <message>
        <source>At the end</source>
        <translation>Am Ende</translation>
    </message>
    <message>
        <source>Unit of the consumption</source>
        <translation>Einheit des Verbrauchs</translation>
    </message>
    <message>
        <source>More fields</source>
        <translation>Weitere Felder</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close the panel (Esc)</source>
        <translation>Das Feld schließen (Esc)</translation>
    </message>
    <message>
        <source>Something was adjusted during the run</source>
        <translation>Während der Fahrt wurde etwas verstellt</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n runs: %1</source>
        <translation>
            <numerusform>%n Fahrt: %1</numerusform>
            <numerusform>%n Fahrten: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>hidden</source>
        <translation>verborgen</translation>
    </message>
    <message>
        <source>Alt+T</source>
        <comment>the key that takes what was meant</comment>
        <translation>Alt+T</translation>
    </message>
    <message>
        <source>Alt+K</source>
        <comment>the key that keeps what was typed</comment>
        <translation>Alt+K</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <extracomment>what a button does, and the key that does it</extracomment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation>%1 übernehmen</translation>
    </message>
    <message>
        <source>Keep %1</source>
        <translation>%1 behalten</translation>
    </message>
    <message>
        <source>Run %1 keeps the consumption it had: %2 was not confirmed.</source>
        <translation>Fahrt %1 behält ihren Verbrauch: %2 wurde nicht bestätigt.</translation>
    </message>
    <message>
        <source>each its own</source>
        <translation>je Fahrt eigen</translation>
    </message>
    <message>
        <source>differs</source>
        <translation>verschieden</translation>
    </message>
</context>
<context>
    <name>bothways::app::RunListModel</name>
    <message>
        <source>counts</source>
        <translation>gewertet</translation>
    </message>
    <message>
        <source>no partner</source>
        <translation>ohne Partner</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>verworfen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Taken from the recording: the driver noted none.</source>
        <translation>Aus der Aufzeichnung übernommen: Der Fahrer hat keinen Wert notiert.</translation>
    </message>
    <message>
        <source>%1 (overruled: %2)</source>
        <translation>%1 (zurückgewiesen: %2)</translation>
    </message>
    <message>
        <source>Pair %1, tied by hand</source>
        <translation>Paar %1, von Hand gebildet</translation>
    </message>
    <message>
        <source>Pair %1</source>
        <translation>Paar %1</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>Pair</source>
        <translation>Paar</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Reason, notes</source>
        <translation>Grund, Notizen</translation>
    </message>
    <message>
        <source>%1,
%2</source>
        <translation>%1,
%2</translation>
    </message>
    <message>
        <source>Run %1 was left as it is. %2</source>
        <translation>Fahrt %1 blieb, wie sie war. %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
</context>
<context>
    <name>bothways::app::RunListView</name>
    <message>
        <source>Runs in the order in which they were driven</source>
        <translation>Fahrten in der Reihenfolge, in der sie gefahren wurden</translation>
    </message>
    <message>
        <source>No runs yet. Ctrl+N begins the first; a run sheet can be dropped here.</source>
        <translation>Noch keine Fahrten. Strg+N beginnt die erste; ein Fahrtenblatt lässt sich hier ablegen.</translation>
    </message>
</context>
<context>
    <name>bothways::app::RunsByForm</name>
    <message>
        <source>R&amp;uns begin and end</source>
        <translation>Fahrten beginnen &amp;und enden</translation>
    </message>
</context>
<context>
    <name>bothways::app::StartPage</name>
    <message>
        <source>Does it change the consumption?</source>
        <translation>Ändert es den Verbrauch?</translation>
    </message>
    <message>
        <source>Log runs driven out and back, baseline – device – baseline. Bothways finds the runs that cannot be used, pairs the rest, and says whether there is an effect, how large, how sure, and if the runs cannot tell, what it would take.</source>
        <translation>Halten Sie Fahrten fest, hin und zurück gefahren, Referenz – Gerät – Referenz. Bothways findet die unbrauchbaren Fahrten, paart die übrigen und sagt, ob es einen Effekt gibt, wie groß und wie sicher er ist und, wenn die Fahrten es nicht entscheiden, was dafür nötig wäre.</translation>
    </message>
    <message>
        <source>&amp;Demo study</source>
        <translation>&amp;Demostudie</translation>
    </message>
    <message>
        <source>An invented day with a generator on a van&apos;s roof</source>
        <translation>Ein erfundener Tag mit einem Generator auf dem Dach eines Lieferwagens</translation>
    </message>
    <message>
        <source>&amp;New study</source>
        <translation>&amp;Neue Studie</translation>
    </message>
    <message>
        <source>Empty, and ready for the first run; saved as you type</source>
        <translation>Leer und bereit für die erste Fahrt; beim Eingeben gespeichert</translation>
    </message>
    <message>
        <source>&amp;Open a study…</source>
        <translation>Studie ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>A file that ends in .bothways</source>
        <translation>Eine Datei, die auf .bothways endet</translation>
    </message>
    <message>
        <source>&amp;Import a run sheet…</source>
        <translation>Fahrtenblatt &amp;importieren…</translation>
    </message>
    <message>
        <source>Recent studies</source>
        <translation>Zuletzt benutzte Studien</translation>
    </message>
    <message>
        <source>The driver drives, the companion types. Obey traffic law and the vehicle&apos;s insurance and inspection rules; keep clear of rotating parts. This is no certification procedure.</source>
        <translation>Wer fährt, fährt; wer mitfährt, tippt. Beachten Sie die Verkehrsregeln und die Vorschriften von Versicherung und Hauptuntersuchung; halten Sie Abstand von rotierenden Teilen. Dies ist kein Zertifizierungsverfahren.</translation>
    </message>
    <message>
        <source>%1   –   %2</source>
        <translation>%1   –   %2</translation>
    </message>
    <message>
        <source>A spreadsheet or a CSV file with a line for each run</source>
        <translation>Eine Tabelle oder CSV-Datei mit einer Zeile je Fahrt</translation>
    </message>
</context>
<context>
    <name>bothways::app::StudyJobs</name>
    <message>
        <source>Studies (*.bothways);;All files (*)</source>
        <translation>Studien (*.bothways);;Alle Dateien (*)</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) came from %1.</source>
        <translation>
            <numerusform>%n Fahrt kam aus %1.</numerusform>
            <numerusform>%n Fahrten kamen aus %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Export the run sheet</source>
        <translation>Fahrtenblatt exportieren</translation>
    </message>
    <message>
        <source>The run sheet is in %1.</source>
        <translation>Das Fahrtenblatt ist in %1.</translation>
    </message>
    <message>
        <source>Save a copy of the study</source>
        <translation>Kopie der Studie speichern</translation>
    </message>
    <message>
        <source>A copy is in %1.</source>
        <translation>Eine Kopie ist in %1.</translation>
    </message>
    <message>
        <source>Run sheets in which a spreadsheet finds no formula (*.csv)</source>
        <translation>Fahrtenblätter, in denen eine Tabellenkalkulation keine Formel findet (*.csv)</translation>
    </message>
    <message>
        <source>Run sheets (*.csv *.tsv *.txt *.xlsx *.ods);;All files (*)</source>
        <translation>Fahrtenblätter (*.csv *.tsv *.txt *.xlsx *.ods);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Run sheets (*.csv);;All files (*)</source>
        <translation>Fahrtenblätter (*.csv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>the clipboard</source>
        <translation>der Zwischenablage</translation>
    </message>
    <message>
        <source>There is no text in the clipboard. Copy runs in a study, or lines of a spreadsheet together with the header.</source>
        <translation>In der Zwischenablage steht kein Text. Kopierbar sind Fahrten einer Studie oder Zeilen einer Tabellenkalkulation samt Kopfzeile.</translation>
    </message>
    <message>
        <source>&amp;Import it as a recording…</source>
        <translation>Als Aufzeichnung &amp;importieren…</translation>
    </message>
    <message>
        <source>%1 looks like a logger&apos;s recording and not like a run sheet.</source>
        <translation>%1 sieht nach der Aufzeichnung eines Loggers aus und nicht nach einem Fahrtenblatt.</translation>
    </message>
    <message>
        <source>It is a &amp;run sheet…</source>
        <translation>Es ist ein &amp;Fahrtenblatt…</translation>
    </message>
    <message>
        <source>Clipboard</source>
        <translation>Zwischenablage</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) of the sheet were there already and are in the study twice now; Undo takes the import back.</source>
        <translation>
            <numerusform>%n Fahrt des Blatts war schon da und ist jetzt zweimal in der Studie; Rückgängig nimmt den Import zurück.</numerusform>
            <numerusform>%n Fahrten des Blatts waren schon da und sind jetzt zweimal in der Studie; Rückgängig nimmt den Import zurück.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bothways::app::StudyPage</name>
    <message>
        <source>Run %1 saved.</source>
        <translation>Fahrt %1 gespeichert.</translation>
    </message>
    <message>
        <source>A run is being typed</source>
        <translation>Eine Fahrt wird gerade eingegeben</translation>
    </message>
    <message>
        <source>The new run is not saved yet.</source>
        <translation>Die neue Fahrt ist noch nicht gespeichert.</translation>
    </message>
    <message>
        <source>Save the run</source>
        <translation>Fahrt speichern</translation>
    </message>
    <message>
        <source>Drop it</source>
        <translation>Nicht speichern</translation>
    </message>
    <message>
        <source>Go on typing</source>
        <translation>Weiter eingeben</translation>
    </message>
    <message>
        <source>Choose two runs of one block, one out and one return, to tie them.</source>
        <translation>Wählen Sie zwei Fahrten eines Blocks, eine hin und eine zurück, um sie zu verbinden.</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) removed. Undo brings them back; a run that was driven is better discarded with its reason.</source>
        <translation>
            <numerusform>%n Fahrt entfernt. „Rückgängig“ bringt sie wieder; eine gefahrene Fahrt wird besser mit ihrem Grund verworfen.</numerusform>
            <numerusform>%n Fahrten entfernt. „Rückgängig“ bringt sie wieder; eine gefahrene Fahrt wird besser mit ihrem Grund verworfen.</numerusform>
        </translation>
    </message>
    <message>
        <source>This study is open for reading only.</source>
        <translation>Diese Studie ist nur zum Lesen geöffnet.</translation>
    </message>
    <message>
        <source>No evidence of the chosen runs is a file. Discard a run with a photo or a clip, and it opens here.</source>
        <translation>Kein Beleg der gewählten Fahrten ist eine Datei. Wird eine Fahrt mit einem Foto oder einem Film verworfen, öffnet er sich hier.</translation>
    </message>
</context>
<context>
    <name>bothways::app::StudyPropertiesDialog</name>
    <message>
        <source>like 2026-05-09</source>
        <translation>wie 09.05.2026</translation>
    </message>
    <message>
        <source>like 2026-05-09T05:20</source>
        <translation>wie 09.05.2026 05:20</translation>
    </message>
    <message>
        <source>declared load</source>
        <translation>angegebene Last</translation>
    </message>
    <message>
        <source>change that counts</source>
        <translation>Änderung, die zählt</translation>
    </message>
    <message>
        <source>highest speed permitted</source>
        <translation>höchste zulässige Drehzahl</translation>
    </message>
    <message>
        <source>missing time that counts</source>
        <translation>fehlende Zeit, die zählt</translation>
    </message>
    <message>
        <source>for at least</source>
        <translation>mindestens so lange</translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation>Toleranz</translation>
    </message>
    <message>
        <source>highest level permitted</source>
        <translation>höchster zulässiger Pegel</translation>
    </message>
    <message>
        <source>mean of the run off target by</source>
        <translation>Mittel der Fahrt weicht vom Ziel ab um</translation>
    </message>
    <message>
        <source>slower than this share of the target</source>
        <translation>langsamer als dieser Anteil des Ziels</translation>
    </message>
    <message>
        <source>fall that counts</source>
        <translation>Abfall, der zählt</translation>
    </message>
    <message>
        <source>off by more than</source>
        <translation>daneben um mehr als</translation>
    </message>
    <message>
        <source>departure, robust sigmas</source>
        <translation>Abweichung, robuste Sigma</translation>
    </message>
    <message>
        <source>difference that counts</source>
        <translation>Unterschied, der zählt</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb von</translation>
    </message>
    <message>
        <source>Study properties</source>
        <translation>Eigenschaften der Studie</translation>
    </message>
    <message>
        <source>Study</source>
        <translation>Studie</translation>
    </message>
    <message>
        <source>Stretch and vehicle</source>
        <translation>Strecke und Fahrzeug</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Timed accessories</source>
        <translation>Zeitschaltungen</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>What the study is called</source>
        <translation>Wie die Studie heißt</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>For runs given by time of day: 2026-05-09</source>
        <translation>Für Fahrten, die nur eine Uhrzeit haben: 09.05.2026</translation>
    </message>
    <message>
        <source>Baseline configuration</source>
        <translation>Referenzkonfiguration</translation>
    </message>
    <message>
        <source>Name of the configuration without the device; empty: A, else that of the first run</source>
        <translation>Name der Konfiguration ohne das Gerät; leer: A, sonst die der ersten Fahrt</translation>
    </message>
    <message>
        <source>Margin, %</source>
        <translation>Relevanzschwelle, %</translation>
    </message>
    <message>
        <source>The smallest effect that you would care about</source>
        <translation>Der kleinste Effekt, auf den es Ihnen ankäme</translation>
    </message>
    <message>
        <source>Confidence</source>
        <translation>Vertrauensniveau</translation>
    </message>
    <message>
        <source>Above 0.5 and below 1</source>
        <translation>Über 0,5 und unter 1</translation>
    </message>
    <message>
        <source>Widest gap in a pair, min</source>
        <translation>Größte Lücke in einem Paar, min</translation>
    </message>
    <message>
        <source>An out and a return run further apart than this are no pair</source>
        <translation>Eine Hinfahrt und eine Rückfahrt, die weiter auseinanderliegen, sind kein Paar</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Length of the stretch, %1</source>
        <translation>Länge der Messstrecke, %1</translation>
    </message>
    <message>
        <source>Runs whose distance is off by more than 2 % are found doubtful</source>
        <translation>Fahrten, deren Strecke um mehr als 2&#xa0;% abweicht, gelten als zweifelhaft</translation>
    </message>
    <message>
        <source>Bearing of the out direction, °</source>
        <translation>Richtung der Hinfahrt, °</translation>
    </message>
    <message>
        <source>0 north, 90 east; for the wind&apos;s part in the air check</source>
        <translation>0 Norden, 90 Osten; für den Anteil des Windes in der Prüfung der Luft</translation>
    </message>
    <message>
        <source>Target speed, %1</source>
        <translation>Zielgeschwindigkeit, %1</translation>
    </message>
    <message>
        <source>Cruise speed that was to be held</source>
        <translation>Geschwindigkeit, die gehalten werden sollte</translation>
    </message>
    <message>
        <source>Cold start</source>
        <translation>Kaltstart</translation>
    </message>
    <message>
        <source>When the engine was started cold: 2026-05-09T05:20, or 05:20 where the study has a date</source>
        <translation>Wann der Motor kalt gestartet wurde: 09.05.2026 05:20, oder 05:20, wenn die Studie ein Datum hat</translation>
    </message>
    <message>
        <source>Share of consumption that goes into the air</source>
        <translation>Anteil des Verbrauchs für den Luftwiderstand</translation>
    </message>
    <message>
        <source>0 to 1; about 0.6 at motorway speed (rule of thumb)</source>
        <translation>0 bis 1; etwa 0,6 bei Autobahngeschwindigkeit (Faustregel)</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>Petrol</source>
        <translation>Benzin</translation>
    </message>
    <message>
        <source>Petrol with 10 % ethanol (E10)</source>
        <translation>Benzin mit 10&#xa0;% Ethanol (E10)</translation>
    </message>
    <message>
        <source>Diesel</source>
        <translation>Diesel</translation>
    </message>
    <message>
        <source>Electric drive</source>
        <translation>Elektroantrieb</translation>
    </message>
    <message>
        <source>A rule without a limit is not checked. Empty fields take the usual value.</source>
        <translation>Eine Regel ohne Grenze wird nicht geprüft. Leere Felder nehmen den üblichen Wert.</translation>
    </message>
    <message>
        <source>Limits of the screening rules</source>
        <translation>Grenzen der Sichtungsregeln</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>Your value</source>
        <translation>Ihr Wert</translation>
    </message>
    <message>
        <source>Usual value</source>
        <translation>Üblicher Wert</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>Accessories that switch themselves off, a heated windscreen for instance: what they draw, and after how long they drop out.</source>
        <translation>Nebenverbraucher, die sich selbst abschalten, etwa eine Frontscheibenheizung: was sie aufnehmen und nach welcher Zeit sie abschalten.</translation>
    </message>
    <message>
        <source>Watts</source>
        <translation>Watt</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>What was decided before the first run. Until it is fulfilled the verdict says interim, and looks at it go on record: looking after each block and stopping at the first good answer finds effects that are not there.</source>
        <translation>Was vor der ersten Fahrt entschieden wurde. Bis es erfüllt ist, heißt das Urteil vorläufig, und jeder Blick darauf wird festgehalten: Wer nach jedem Block nachsieht und bei der ersten guten Antwort aufhört, findet Effekte, die es nicht gibt.</translation>
    </message>
    <message>
        <source>Sequence of configurations</source>
        <translation>Folge der Konfigurationen</translation>
    </message>
    <message>
        <source>ABA for instance; empty: no plan</source>
        <translation>Zum Beispiel ABA; leer: kein Plan</translation>
    </message>
    <message>
        <source>Pairs a block</source>
        <translation>Paare je Block</translation>
    </message>
    <message>
        <source>A whole number</source>
        <translation>Eine ganze Zahl</translation>
    </message>
    <message>
        <source>Claim, %</source>
        <translation>Behauptung, %</translation>
    </message>
    <message>
        <source>What someone says that the device does; negative: less. Empty: nobody does</source>
        <translation>Was jemand dem Gerät zuschreibt; negativ: weniger. Leer: niemand</translation>
    </message>
    <message>
        <source>Known noise of a pair</source>
        <translation>Bekanntes Rauschen eines Paares</translation>
    </message>
    <message>
        <source>From earlier days with this vehicle: per cent and degrees of freedom, 0.9,21</source>
        <translation>Von früheren Tagen mit diesem Fahrzeug: Prozent und Freiheitsgrade, 0,9; 21</translation>
    </message>
    <message>
        <source>like 0.9,21</source>
        <translation>wie 0,9; 21</translation>
    </message>
    <message>
        <source>Known from</source>
        <translation>Bekannt aus</translation>
    </message>
    <message>
        <source>Whence that noise is known</source>
        <translation>Woher dieses Rauschen bekannt ist</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>none</source>
        <comment>no claim</comment>
        <translation>keine</translation>
    </message>
</context>
<context>
    <name>bothways::app::TracePlot</name>
    <message>
        <source>time since the run&apos;s start, s</source>
        <translation>Zeit seit dem Start der Fahrt, s</translation>
    </message>
    <message>
        <source>distance since the run&apos;s start, %1</source>
        <translation>Strecke seit dem Start der Fahrt, %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>glyph and name of a finding</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>⚑ %1</source>
        <translation>⚑ %1</translation>
    </message>
    <message>
        <source>%1&#xa0;%2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1&#xa0;s</source>
        <translation>%1&#xa0;s</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>a run&apos;s name, and its value</extracomment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>bothways::app::TraceScatter</name>
    <message>
        <source>%1 against %2</source>
        <extracomment>one channel against another</extracomment>
        <translation>%1 gegen %2</translation>
    </message>
    <message>
        <source>Of the longest run one sample in %1 is drawn.</source>
        <translation>Von der längsten Fahrt ist ein Messwert von je %1 gezeichnet.</translation>
    </message>
    <message>
        <source>Every sample is drawn.</source>
        <translation>Alle Messwerte sind gezeichnet.</translation>
    </message>
</context>
<context>
    <name>bothways::app::TraceView</name>
    <message>
        <source>This run has no recording.</source>
        <translation>Diese Fahrt hat keine Aufzeichnung.</translation>
    </message>
    <message>
        <source>run %1</source>
        <translation>Fahrt %1</translation>
    </message>
    <message>
        <source>%1, as set</source>
        <translation>%1, Sollwert</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>a run and a finding in it</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>Recording of run %1 with %n finding(s).</source>
        <translation>
            <numerusform>Aufzeichnung der Fahrt %1 mit %n Befund.</numerusform>
            <numerusform>Aufzeichnung der Fahrt %1 mit %n Befunden.</numerusform>
        </translation>
    </message>
    <message>
        <source>Recording</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>No run has a recording yet. Import one to look at it here.</source>
        <translation>Noch keine Fahrt hat eine Aufzeichnung. Importieren Sie eine, um sie hier anzusehen.</translation>
    </message>
    <message>
        <source>&amp;Runs</source>
        <translation>&amp;Fahrten</translation>
    </message>
    <message>
        <source>C&amp;hannels</source>
        <translation>&amp;Kanäle</translation>
    </message>
    <message>
        <source>by time</source>
        <translation>über der Zeit</translation>
    </message>
    <message>
        <source>by distance</source>
        <translation>über der Strecke</translation>
    </message>
    <message>
        <source>What the runs are laid along</source>
        <translation>Worüber die Fahrten aufgetragen sind</translation>
    </message>
    <message>
        <source>◀ finding</source>
        <translation>◀ Befund</translation>
    </message>
    <message>
        <source>Previous finding</source>
        <translation>Voriger Befund</translation>
    </message>
    <message>
        <source>finding ▶</source>
        <translation>Befund ▶</translation>
    </message>
    <message>
        <source>Next finding</source>
        <translation>Nächster Befund</translation>
    </message>
    <message>
        <source>Previous finding (Ctrl+Page Up)</source>
        <translation>Voriger Befund (Strg+Bild auf)</translation>
    </message>
    <message>
        <source>Next finding (Ctrl+Page Down)</source>
        <translation>Nächster Befund (Strg+Bild ab)</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>against</source>
        <extracomment>one channel against another</extracomment>
        <translation>gegen</translation>
    </message>
    <message>
        <source>Channel across</source>
        <translation>Kanal waagerecht</translation>
    </message>
    <message>
        <source>Channel up</source>
        <translation>Kanal senkrecht</translation>
    </message>
    <message>
        <source>Over the run</source>
        <translation>Über der Fahrt</translation>
    </message>
    <message>
        <source>Channel against channel</source>
        <translation>Kanal gegen Kanal</translation>
    </message>
    <message>
        <source>One channel against another</source>
        <translation>Ein Kanal gegen einen anderen</translation>
    </message>
    <message>
        <source>%1: discarded</source>
        <comment>a run</comment>
        <translation>%1: verworfen</translation>
    </message>
</context>
<context>
    <name>bothways::app::WalkDialog</name>
    <message>
        <source>Walk-round</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Change the &amp;list…</source>
        <translation>&amp;Liste ändern…</translation>
    </message>
    <message>
        <source>What is looked at while the car stands, before each block: one thing a line. A line that asks for a number has its unit behind it, and how far two numbers may be apart: “tyre pressure = kPa +- 10”.</source>
        <translation>Was im Stand angesehen wird, vor jedem Block: eines je Zeile. Eine Zeile, die nach einer Zahl fragt, hat dahinter die Einheit und wie weit zwei Zahlen auseinander sein dürfen: „Reifendruck = kPa +- 10“.</translation>
    </message>
    <message>
        <source>Lines of the walk-round</source>
        <translation>Zeilen des Rundgangs</translation>
    </message>
    <message>
        <source>Before run %1. Tick what is in order; what is left open is kept as open. The numbers go into the run.</source>
        <translation>Vor Fahrt %1. Abhaken, was in Ordnung ist; was offen bleibt, wird als offen behalten. Die Zahlen kommen in die Fahrt.</translation>
    </message>
    <message>
        <source>&amp;Note it</source>
        <translation>&amp;Notieren</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <translation>%1, in %2</translation>
    </message>
    <message>
        <source>%1 before</source>
        <translation>vorher %1</translation>
    </message>
    <message>
        <source>± %1 allowed</source>
        <translation>± %1 erlaubt</translation>
    </message>
    <message>
        <source>no loose nut; belts on; no wire hangs; accessories as in every run; tyre pressure = kPa +- 10</source>
        <extracomment>parted by &quot;;&quot;: a first list of what is looked at before a block</extracomment>
        <translation>keine Mutter lose; Riemen auf; kein Kabel hängt; Verbraucher wie in jeder Fahrt; Reifendruck = kPa +- 10</translation>
    </message>
    <message>
        <source>&amp;Use this list</source>
        <translation>Diese Liste &amp;verwenden</translation>
    </message>
    <message>
        <source>%1: expected a number.</source>
        <translation>%1: erwartet wird eine Zahl.</translation>
    </message>
</context>
<context>
    <name>bothways::app::WatchPanel</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>≤ %1</source>
        <extracomment>the highest value that a channel may have</extracomment>
        <translation>≤ %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Channels</source>
        <translation>Kanäle</translation>
    </message>
</context>
<context>
    <name>bothways::app::WhyPage</name>
    <message>
        <source>Why this verdict</source>
        <translation>Warum dieses Urteil</translation>
    </message>
    <message>
        <source>Copy as &amp;text</source>
        <translation>Als &amp;Text kopieren</translation>
    </message>
    <message>
        <source>For a forum or a letter: plain text with its tables (Markdown)</source>
        <translation>Für ein Forum oder einen Brief: reiner Text mit seinen Tabellen (Markdown)</translation>
    </message>
    <message>
        <source>Copy as &amp;HTML</source>
        <translation>Als &amp;HTML kopieren</translation>
    </message>
    <message>
        <source>For a word processor or a web page</source>
        <translation>Für eine Textverarbeitung oder eine Webseite</translation>
    </message>
</context>
<context>
    <name>bothways::app::WidthsPlot</name>
    <message>
        <source>%1, %2: plus or minus %3&#xa0;%</source>
        <translation>%1, %2: plus oder minus %3&#xa0;%</translation>
    </message>
    <message>
        <source>half-width of the interval, per cent: narrower is better</source>
        <translation>halbe Breite des Intervalls, Prozent: schmaler ist besser</translation>
    </message>
    <message>
        <source>More switches or more pairs, for the same hours</source>
        <translation>Mehr Wechsel oder mehr Paare, in denselben Stunden</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n pair(s) a block</source>
        <translation>
            <numerusform>%1, %n Paar je Block</numerusform>
            <numerusform>%1, %n Paare je Block</numerusform>
        </translation>
    </message>
</context>
</TS>
