<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Sentences</name>
    <message>
        <source>  if the drift bends</source>
        <translation>  bei gekrümmter Drift</translation>
    </message>
    <message>
        <source>  if you look as you go</source>
        <translation>  bei Blicken unterwegs</translation>
    </message>
    <message>
        <source>  with that noise known</source>
        <translation>  Rauschen bekannt</translation>
    </message>
    <message>
        <source> (and {} more like it)</source>
        <translation> (und {} weitere dieser Art)</translation>
    </message>
    <message>
        <source> (limit {} {})</source>
        <translation> (Grenze {} {})</translation>
    </message>
    <message>
        <source> (limit {})</source>
        <translation> (Grenze {})</translation>
    </message>
    <message>
        <source> (runs {} and {})</source>
        <translation> (Fahrten {} und {})</translation>
    </message>
    <message>
        <source> Each needs at least 2 pairs, out and back in one block.</source>
        <translation> Jede Konfiguration braucht mindestens 2 Paare, hin und zurück in einem Block.</translation>
    </message>
    <message>
        <source> Effect and drift use them up, and nothing is left to judge the noise by: drive one pair more.</source>
        <translation> Effekt und Drift verbrauchen sie, und nichts bleibt, um das Rauschen zu beurteilen: Fahren Sie ein Paar mehr.</translation>
    </message>
    <message>
        <source> Put back singly, {} and {}.</source>
        <translation> Einzeln wieder gewertet: {} und {}.</translation>
    </message>
    <message>
        <source> Run {} has no partner within {} minutes.</source>
        <translation> Fahrt {} hat keinen Partner innerhalb von {} Minuten.</translation>
    </message>
    <message>
        <source> The density formula is used outside its range, so take it as approximate.</source>
        <translation> Die Formel für die Luftdichte wird außerhalb ihres Bereichs benutzt; nehmen Sie den Wert als Näherung.</translation>
    </message>
    <message>
        <source> With so few deals no p below {} is possible.</source>
        <translation> Bei so wenigen Verteilungen ist kein p unter {} möglich.</translation>
    </message>
    <message>
        <source> and later, {} days</source>
        <translation> und später, an {} Tagen</translation>
    </message>
    <message>
        <source> at {} s</source>
        <translation> bei {} s</translation>
    </message>
    <message>
        <source> for {} s</source>
        <translation> ({} s lang)</translation>
    </message>
    <message>
        <source> from {} s to {} s</source>
        <translation> von {} s bis {} s</translation>
    </message>
    <message>
        <source> {} counted runs have no partner within {} minutes.</source>
        <translation> {} gewertete Fahrten haben keinen Partner innerhalb von {} Minuten.</translation>
    </message>
    <message>
        <source> {} {} ({} to {}){}</source>
        <translation> {} {} ({} bis {}){}</translation>
    </message>
    <message>
        <source>&quot;unit&quot; is the device&apos;s number; expected 0 to 255</source>
        <translation>„unit“ ist die Nummer des Geräts; erwartet: 0 bis 255</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is no number</source>
        <translation>„{}“ ist keine Zahl</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is no text</source>
        <translation>„{}“ ist kein Text</translation>
    </message>
    <message>
        <source>%</source>
        <comment>unit</comment>
        <translation>%</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; may be the number {1}.{2}, or the factor {1} and the offset {2}; expected {1}.{2} for the one, {1}.0,{2} for the other</source>
        <translation>„{0}“ kann die Zahl {1}.{2} sein oder der Faktor {1} und der Versatz {2}; erwartet wird {1}.{2} für das eine, {1}.0,{2} für das andere</translation>
    </message>
    <message>
        <source>&apos;{} {} from trace&apos;</source>
        <translation>„{} {} aus der Aufzeichnung“</translation>
    </message>
    <message>
        <source>&apos;{} {}&apos;</source>
        <translation>„{} {}“</translation>
    </message>
    <message>
        <source>&apos;{}&apos;</source>
        <translation>„{}“</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is a time of day, and the study has no one date; expected date and time, like 2026-05-09 05:40</source>
        <translation>„{}“ ist eine Uhrzeit, und die Studie hat kein einzelnes Datum; erwartet werden Datum und Uhrzeit, wie 2026-05-09 05:40</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is kept as a column of your own; did you mean &apos;{}&apos;?</source>
        <translation>„{}“ bleibt als eigene Spalte; war „{}“ gemeint?</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no address of this computer; expected udp:*:PORT</source>
        <translation>„{}“ ist keine Adresse dieses Rechners; erwartet: udp:*:PORT</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no address; expected serial:PORT,BAUD, tcp:HOST:PORT, udp:*:PORT or file:PATH</source>
        <translation>„{}“ ist keine Adresse; erwartet: serial:PORT,BAUD, tcp:HOST:PORT, udp:*:PORT oder file:PFAD</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no channel; expected SOURCE=CHANNEL, SOURCE=CHANNEL*FACTOR+OFFSET or the same with a unit, as in &apos;rpm=rotor_rpm*0.5+3 rpm&apos;</source>
        <translation>„{}“ ist kein Kanal; erwartet: QUELLE=KANAL, QUELLE=KANAL*FAKTOR+VERSATZ oder dasselbe mit einer Einheit wie in &apos;rpm=rotor_rpm*0.5+3 rpm&apos;</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no column; expected HEADER=COLUMN</source>
        <translation>„{}“ ist keine Spalte; erwartet wird HEADER=COLUMN (ÜBERSCHRIFT=SPALTE)</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no consumption; expected a number, or UNIT=NUMBER like l_per_100km=8.41</source>
        <translation>„{}“ ist kein Verbrauch; erwartet wird eine Zahl oder EINHEIT=ZAHL wie l_per_100km=8.41</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no date; expected YYYY-MM-DD, a day that there is</source>
        <translation>„{}“ ist kein Datum; erwartet wird JJJJ-MM-TT, ein Tag, den es gibt</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no instrument; expected KIND:ADDRESS with one of the kinds lines, nmea, modbus, obd, replay, as in lines:serial:/dev/ttyUSB0,115200</source>
        <translation>„{}“ ist kein Messgerät; erwartet: ART:ADRESSE mit einer der Arten lines, nmea, modbus, obd, replay, etwa lines:serial:/dev/ttyUSB0,115200</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no line of the walk-round; expected all, 1 to {}, a range like 2-4, or 3=230</source>
        <translation>„{}“ ist keine Zeile des Rundgangs; erwartet wird all, 1 bis {}, ein Bereich wie 2-4 oder 3=230</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no mapping; expected COLUMN=CHANNEL, COLUMN=CHANNEL*FACTOR or COLUMN=CHANNEL*FACTOR+OFFSET</source>
        <translation>„{}“ ist keine Zuordnung; erwartet wird SPALTE=KANAL, SPALTE=KANAL*FAKTOR oder SPALTE=KANAL*FAKTOR+VERSATZ</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no name for a rig; expected a name without &apos;/&apos; that does not begin with a point</source>
        <translation>„{}“ ist kein Name für eine Messausrüstung; erwartet: ein Name ohne „/“, der nicht mit einem Punkt beginnt</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no number</source>
        <translation>„{}“ ist keine Zahl</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no number; expected one in {}</source>
        <translation>„{}“ ist keine Zahl; erwartet wird eine in {}</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no order; expected one of {}</source>
        <translation>„{}“ ist keine Anweisung; erwartet wird eine von {}</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no pair of readings; expected SHOWN=TRUE, as in 1480=1500</source>
        <translation>„{}“ ist kein Paar von Ablesungen; erwartet: GEZEIGT=WAHR wie 1480=1500</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no property of a study; expected {}accessory_timer.NAME, or a limit like overspeed.rpm</source>
        <translation>„{}“ ist keine Eigenschaft einer Studie; erwartet wird {}accessory_timer.NAME oder ein Grenzwert wie overspeed.rpm</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no reason; expected one of {}</source>
        <translation>„{}“ ist kein Grund; erwartet wird einer von {}</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no register; expected TABLE:REGISTER:TYPE such as holding:3:u16 or input:0x10:f32:cdab, with the tables holding, input, the types u16, s16, u32, s32, f32 and the word orders abcd, cdab, badc, dcba</source>
        <translation>„{}“ ist kein Register; erwartet: TABELLE:REGISTER:TYP wie holding:3:u16 oder input:0x10:f32:cdab, mit den Tabellen holding, input, den Typen u16, s16, u32, s32, f32 und den Wortfolgen abcd, cdab, badc, dcba</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no rule; expected one of {}</source>
        <translation>„{}“ ist keine Regel; erwartet wird eine von {}</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no run; expected a number, or several like 7-9,12</source>
        <translation>„{}“ ist keine Fahrt; erwartet wird eine Nummer oder mehrere wie 7-9,12</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no time; expected date and time, like 2026-05-09 05:40, or a time of day</source>
        <translation>„{}“ ist keine Zeit; erwartet werden Datum und Uhrzeit, wie 2026-05-09 05:40, oder eine Uhrzeit</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no unit that is known here; expected one of the list, or a factor and an offset such as *0.5556-17.78</source>
        <translation>&apos;{}&apos; ist keine hier bekannte Einheit; erwartet wird eine der Liste, oder ein Faktor und ein Versatz wie *0.5556-17.78</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is no weather; expected temperature_c, wind_ms, wind_from_deg, pressure_hpa or humidity_pct</source>
        <translation>„{}“ gehört nicht zum Wetter; erwartet: temperature_c, wind_ms, wind_from_deg, pressure_hpa oder humidity_pct</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is not COLUMN=CHANNEL[,FACTOR[,OFFSET]]</source>
        <translation>„{}“ ist nicht SPALTE=KANAL[,FAKTOR[,VERSATZ]]</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is not COLUMN=VALUE</source>
        <translation>„{}“ ist nicht SPALTE=WERT</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is not LAT,LON,LAT,LON[,METRES]</source>
        <translation>„{}“ ist nicht BREITE,LÄNGE,BREITE,LÄNGE[,METER]</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is not LOW,MIDDLE,HIGH in rising order</source>
        <translation>„{}“ ist nicht UNTEN,MITTE,OBEN in steigender Folge</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is not NAME=VALUE</source>
        <translation>„{}“ ist nicht NAME=WERT</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is not a whole number from {} to {}</source>
        <translation>„{}“ ist keine ganze Zahl von {} bis {}</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is not one of l_per_100km, mpg_us, mpg_imp, km_per_l</source>
        <translation>„{}“ ist keines von l_per_100km, mpg_us, mpg_imp, km_per_l</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is not permitted; expected {}</source>
        <translation>„{}“ ist nicht erlaubt; erwartet wird {}</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is not petrol, e10, diesel or electric</source>
        <translation>„{}“ ist nicht petrol, e10, diesel oder electric</translation>
    </message>
    <message>
        <source>&apos;{}&apos; is not {}</source>
        <translation>„{}“ passt nicht; erwartet: {}</translation>
    </message>
    <message>
        <source>&apos;{}&apos; means no column of a run sheet; &apos;bothways columns&apos; lists them</source>
        <translation>„{}“ bezeichnet keine Spalte eines Fahrtenblatts; „bothways columns“ führt sie auf</translation>
    </message>
    <message>
        <source>&apos;{}&apos; was not expected</source>
        <translation>„{}“ war nicht erwartet</translation>
    </message>
    <message>
        <source>&apos;{}&apos; was not expected; repeat {} for each</source>
        <translation>„{}“ war nicht erwartet; {} ist für jeden Wert zu wiederholen</translation>
    </message>
    <message>
        <source>&apos;{}&apos;: no serial port has {} baud; expected one of {}</source>
        <translation>„{}“: Keine serielle Schnittstelle hat {} Baud; erwartet: eine von {}</translation>
    </message>
    <message>
        <source>(Durbin-Watson {}, correlation with the next pair {}, {})</source>
        <translation>(Durbin-Watson {}, Korrelation mit dem nächsten Paar {}, {})</translation>
    </message>
    <message>
        <source>(derived)</source>
        <translation>(berechnet)</translation>
    </message>
    <message>
        <source>(mixed setting)</source>
        <translation>(gemischte Einstellung)</translation>
    </message>
    <message>
        <source>(none noted)</source>
        <translation>(keine notiert)</translation>
    </message>
    <message>
        <source>(tied by hand)</source>
        <translation>(von Hand gebildet)</translation>
    </message>
    <message>
        <source>(undone)</source>
        <translation>(rückgängig gemacht)</translation>
    </message>
    <message>
        <source>({} = {}, {})</source>
        <translation>({} = {}, {})</translation>
    </message>
    <message>
        <source>, above the limit of {} rpm</source>
        <translation>, über der Grenze von {} U/min</translation>
    </message>
    <message>
        <source>, delivering {} W just before</source>
        <translation>, unmittelbar davor mit {} W Abgabeleistung</translation>
    </message>
    <message>
        <source>, within it only at {} s</source>
        <translation>, erst bei {} s im erlaubten Bereich</translation>
    </message>
    <message>
        <source>, {}</source>
        <comment>the runs that it concerns</comment>
        <translation>, {}</translation>
    </message>
    <message>
        <source>,</source>
        <comment>between thousands</comment>
        <translation>.</translation>
    </message>
    <message>
        <source>--csv lists the pairs of one study; several were given</source>
        <translation>--csv listet die Paare einer Studie auf; angegeben sind mehrere</translation>
    </message>
    <message>
        <source>--cut goes with --trace FILE or --recording NAME</source>
        <translation>--cut gehört zu --trace DATEI oder --recording NAME</translation>
    </message>
    <message>
        <source>--cut position and --gates go together</source>
        <translation>--cut position und --gates gehören zusammen</translation>
    </message>
    <message>
        <source>--language needs a value; expected one of {}</source>
        <translation>--language braucht einen Wert; erwartet wird einer von {}</translation>
    </message>
    <message>
        <source>--recording NAME is there to be cut; expected --cut</source>
        <translation>--recording NAME ist zum Schneiden da; erwartet wird --cut</translation>
    </message>
    <message>
        <source>--start goes with --trace FILE or --recording NAME; in a sheet a recording without a clock begins with its run</source>
        <translation>--start gehört zu --trace DATEI oder --recording NAME; in einem Blatt beginnt eine Aufzeichnung ohne Uhr mit ihrer Fahrt</translation>
    </message>
    <message>
        <source>--traces goes with a run sheet</source>
        <translation>--traces gehört zu einem Fahrtenblatt</translation>
    </message>
    <message>
        <source>.</source>
        <comment>decimal sign</comment>
        <translation>,</translation>
    </message>
    <message>
        <source>1 pair a block</source>
        <translation>1 Paar je Block</translation>
    </message>
    <message>
        <source>: {} {} in place of {}</source>
        <translation>: {} {} statt {}</translation>
    </message>
    <message>
        <source>; rounding alone scatters a pair by {} %</source>
        <translation>; das Runden allein streut ein Paar um {} %</translation>
    </message>
    <message>
        <source>&lt; {}</source>
        <translation>&lt; {}</translation>
    </message>
    <message>
        <source>&lt;b&gt;bracket&lt;/b&gt;: each device block against the straight line between its neighbouring baseline blocks. &lt;b&gt;runs&lt;/b&gt;: all counted runs singly, with a term for the direction. &lt;b&gt;blocks&lt;/b&gt;: the model on block means; the only one that stays honest when something besides the device changes at each switch. &lt;b&gt;correlated&lt;/b&gt;: an interval that keeps its coverage when successive pairs resemble each other. &lt;b&gt;curved&lt;/b&gt;: the model with a bend in the drift. &lt;b&gt;any_look&lt;/b&gt;: an interval that holds however often one has looked (a Bayes factor of δ/σ ~ N(0, 4) is kept below 1/α). &lt;b&gt;borrowed&lt;/b&gt;: with the noise of named earlier days. &lt;b&gt;days&lt;/b&gt;: an effect a day. &lt;b&gt;labels&lt;/b&gt;: the labels dealt again over the pairs, p alone; exact only if pairs are exchangeable when there is no effect. The verdict is called fragile when bracket, runs, blocks or curved leaves its estimate out or says another direction, or when the labels clearly disagree.</source>
        <translation>&lt;b&gt;Eingabelung&lt;/b&gt;: jeder Geräteblock gegen die Gerade zwischen seinen benachbarten Referenzblöcken. &lt;b&gt;Einzelfahrten&lt;/b&gt;: alle gewerteten Fahrten einzeln, mit einem Term für die Richtung. &lt;b&gt;Blockmittel&lt;/b&gt;: das Modell auf den Mitteln der Blöcke; der einzige Weg, der ehrlich bleibt, wenn sich bei jedem Wechsel noch etwas anderes ändert als das Gerät. &lt;b&gt;korrelierte Paare&lt;/b&gt;: ein Intervall, das seine Überdeckung behält, wenn aufeinanderfolgende Paare einander ähneln. &lt;b&gt;gekrümmte Drift&lt;/b&gt;: das Modell mit einer Krümmung in der Drift. &lt;b&gt;beliebig oft angesehen&lt;/b&gt;: ein Intervall, das gilt, so oft man auch nachgesehen hat (ein Bayes-Faktor von δ/σ ~ N(0, 4) bleibt unter 1/α). &lt;b&gt;Rauschen früherer Tage&lt;/b&gt;: mit dem Rauschen genannter früherer Tage. &lt;b&gt;Tage&lt;/b&gt;: ein Effekt je Tag. &lt;b&gt;Vertauschen der Zuordnung&lt;/b&gt;: A und B neu auf die Paare verteilt, nur p; exakt nur, wenn die Paare ohne Effekt austauschbar sind. Das Urteil heißt nicht robust, wenn Eingabelung, Einzelfahrten, Blockmittel oder gekrümmte Drift seinen Schätzwert nicht enthält oder eine andere Richtung nennt oder wenn das Vertauschen der Zuordnung deutlich widerspricht.</translation>
    </message>
    <message>
        <source>&lt;b&gt;less&lt;/b&gt;: the whole interval is below zero. &lt;b&gt;more&lt;/b&gt;: the whole interval is above zero. &lt;b&gt;equivalent&lt;/b&gt;: zero is inside, and the interval at confidence 1 − 2α lies between ln(1 − M/100) and ln(1 + M/100), with M the margin in per cent (two one-sided tests, Schuirmann 1987). &lt;b&gt;undecided&lt;/b&gt;: anything else; these runs cannot tell. &lt;b&gt;none&lt;/b&gt;: the runs allow no verdict, and the report says what is missing.</source>
        <translation>&lt;b&gt;weniger&lt;/b&gt;: Das ganze Intervall liegt unter null. &lt;b&gt;mehr&lt;/b&gt;: Das ganze Intervall liegt über null. &lt;b&gt;kein relevanter Unterschied&lt;/b&gt;: Die Null liegt darin, und das Intervall zum Vertrauensniveau 1 − 2α liegt zwischen ln(1 − M/100) und ln(1 + M/100), mit der Relevanzschwelle M in Prozent (zwei einseitige Tests, Schuirmann 1987). &lt;b&gt;nicht entscheidbar&lt;/b&gt;: alles andere; diese Fahrten lassen keine Entscheidung zu. &lt;b&gt;kein Urteil&lt;/b&gt;: Die Fahrten erlauben kein Urteil, und der Bericht sagt, was fehlt.</translation>
    </message>
    <message>
        <source>A &lt;b&gt;run&lt;/b&gt; is one pass over the stretch in one direction; a &lt;b&gt;block&lt;/b&gt; is the consecutive runs in one configuration; a &lt;b&gt;pair&lt;/b&gt; is one out and one return run of the same block, so that slope and a steady wind cancel. Runs are matched one to one: as many pairs as possible, then the smallest sum of time gaps.</source>
        <translation>Eine &lt;b&gt;Fahrt&lt;/b&gt; geht einmal in einer Richtung über die Messstrecke; ein &lt;b&gt;Block&lt;/b&gt; sind die aufeinanderfolgenden Fahrten in einer Konfiguration; ein &lt;b&gt;Paar&lt;/b&gt; sind eine Hinfahrt und eine Rückfahrt desselben Blocks, sodass sich Gefälle und ein stetiger Wind aufheben. Die Fahrten werden eins zu eins zugeordnet: so viele Paare wie möglich, dann die kleinste Summe der Zeitabstände.</translation>
    </message>
    <message>
        <source>A column with another name is named with --column HEADER=COLUMN where the sheet is read, as in: bothways analyse fahrten.xlsx --column &apos;Verbrauch=l_per_100km&apos;</source>
        <translation>Heißt eine Spalte anders, so sagt --column ÜBERSCHRIFT=SPALTE beim Lesen des Blatts, was sie ist, zum Beispiel: bothways analyse fahrten.xlsx --column &apos;Verbrauch=l_per_100km&apos;</translation>
    </message>
    <message>
        <source>A limit of a screening rule for this call: overspeed.rpm=3200; or a timed accessory: accessory_timer.windscreen=450,10 (watts, minutes)</source>
        <translation>Eine Grenze einer Sichtungsregel für diesen Aufruf: overspeed.rpm=3200; oder ein Nebenverbraucher, der sich abschaltet: accessory_timer.windscreen=450,10 (Watt, Minuten)</translation>
    </message>
    <message>
        <source>A part is given to the run of the study with which it overlaps most in time, and only if they overlap by at least half of the shorter of the two (to a run without duration: if its start lies within the part or at most 60 s before its beginning); never two parts to one run. The run takes start and duration of the part; with --cut times runs stay as they are. Other parts are new runs. A recording that cannot be cut does not come in.</source>
        <translation>Ein Teil geht an die Fahrt der Studie, mit der er sich zeitlich am meisten überschneidet, und nur, wenn die Überschneidung mindestens die Hälfte des kürzeren von beiden ausmacht (an eine Fahrt ohne Dauer: wenn ihr Start im Teil oder höchstens 60 s vor dessen Anfang liegt); nie zwei Teile an eine Fahrt. Die Fahrt übernimmt Start und Dauer des Teils; mit --cut times bleiben Fahrten, wie sie sind. Andere Teile sind neue Fahrten. Eine Aufzeichnung, die sich nicht schneiden lässt, kommt nicht in die Studie.</translation>
    </message>
    <message>
        <source>A photo, or a clip and its second, as evidence: name, size and SHA-256 are kept</source>
        <translation>Ein Foto, oder ein Film und seine Sekunde, als Beleg: Name, Größe und SHA-256 werden behalten</translation>
    </message>
    <message>
        <source>A recording that the study has, by its file&apos;s name, to be cut</source>
        <translation>Eine Aufzeichnung, die die Studie hat, nach dem Namen ihrer Datei, zum Schneiden</translation>
    </message>
    <message>
        <source>A recording: CSV, GPX 1.1 or NMEA 0183</source>
        <translation>Eine Aufzeichnung: CSV, GPX 1.1 oder NMEA 0183</translation>
    </message>
    <message>
        <source>A rig&apos;s name or file</source>
        <translation>Name oder Datei einer Messausrüstung</translation>
    </message>
    <message>
        <source>A rig&apos;s name or file, or KIND:ADDRESS</source>
        <translation>Name oder Datei einer Messausrüstung oder ART:ADRESSE</translation>
    </message>
    <message>
        <source>A rig&apos;s name or file; see &apos;bothways rig&apos;</source>
        <translation>Name oder Datei einer Messausrüstung; siehe „bothways rig“</translation>
    </message>
    <message>
        <source>A rule&apos;s name, or other</source>
        <translation>Name einer Regel, oder other</translation>
    </message>
    <message>
        <source>A run counts unless a person discarded it, with a reason. Rules name runs that cannot be used and say what they saw; they discard nothing themselves. Each pair is left out once, and each discarded run put back once, so that nobody can choose the result by choosing the runs.</source>
        <translation>Eine Fahrt zählt, solange nicht ein Mensch sie mit einem Grund verworfen hat. Die Regeln nennen Fahrten, die nicht zu gebrauchen sind, und sagen, was sie gesehen haben; sie verwerfen selbst nichts. Jedes Paar wird einmal weggelassen und jede verworfene Fahrt einmal wieder gewertet, damit niemand mit den Fahrten das Ergebnis aussuchen kann.</translation>
    </message>
    <message>
        <source>A run sheet with every column (default)</source>
        <translation>Ein Fahrtenblatt mit allen Spalten (Vorgabe)</translation>
    </message>
    <message>
        <source>A run sheet: CSV, .xlsx or .ods</source>
        <translation>Ein Fahrtenblatt: CSV, .xlsx oder .ods</translation>
    </message>
    <message>
        <source>A sheet with a bad line is refused whole, and every bad line is listed.</source>
        <translation>Ein Blatt mit einer fehlerhaften Zeile wird ganz abgelehnt, und jede fehlerhafte Zeile wird aufgeführt.</translation>
    </message>
    <message>
        <source>A study (.bothways) or a run sheet (CSV).</source>
        <translation>Eine Studie (.bothways) oder ein Fahrtenblatt (CSV).</translation>
    </message>
    <message>
        <source>A study or a run sheet</source>
        <translation>Eine Studie oder ein Fahrtenblatt</translation>
    </message>
    <message>
        <source>A study or a run sheet; several are pooled</source>
        <translation>Eine Studie oder ein Fahrtenblatt; mehrere werden zusammengefasst</translation>
    </message>
    <message>
        <source>A study or run sheet of this vehicle whose noise is borrowed; repeat for more</source>
        <translation>Eine Studie oder ein Fahrtenblatt dieses Fahrzeugs, deren Rauschen mitbenutzt wird; für weitere wiederholen</translation>
    </message>
    <message>
        <source>A study or run sheet: gives consumption, and the effect that it could show</source>
        <translation>Eine Studie oder ein Fahrtenblatt: gibt den Verbrauch vor und den Effekt, den sie zeigen könnte</translation>
    </message>
    <message>
        <source>Accessories on a timer</source>
        <translation>Nebenverbraucher mit Zeitschaltung</translation>
    </message>
    <message>
        <source>Accessories {} W too high</source>
        <translation>Nebenverbraucher {} W zu hoch</translation>
    </message>
    <message>
        <source>Accessories {} W too low</source>
        <translation>Nebenverbraucher {} W zu niedrig</translation>
    </message>
    <message>
        <source>Add one run to a study</source>
        <translation>Eine Fahrt zu einer Studie hinzufügen</translation>
    </message>
    <message>
        <source>Adjusted</source>
        <translation>Verstellt</translation>
    </message>
    <message>
        <source>Adjusted during the run</source>
        <translation>Während der Fahrt verstellt</translation>
    </message>
    <message>
        <source>Allowing for pairs that resemble their neighbours widens the interval to where such noise would put it</source>
        <translation>Rücksicht auf Paare, die ihren Nachbarn ähneln, weitet das Intervall so, wie es einem solchen Rauschen entspricht</translation>
    </message>
    <message>
        <source>An arrowhead points to what is beyond the picture.</source>
        <translation>Eine Pfeilspitze weist auf das, was außerhalb des Bildes liegt.</translation>
    </message>
    <message>
        <source>An assumption is not met ({}): read that check before you trust the interval.</source>
        <translation>Eine Annahme ist verletzt ({}): Lesen Sie diese Prüfung, bevor Sie dem Intervall trauen.</translation>
    </message>
    <message>
        <source>An effect of {} % would have been found by such a day {} times in 100; one pair scatters by {} %.</source>
        <translation>Einen Effekt von {} % hätte ein solcher Tag in {} von 100 Fällen gefunden; ein Paar streut um {} %.</translation>
    </message>
    <message>
        <source>An instrument, once for each: lines, nmea, modbus, obd or replay, and where it is</source>
        <translation>Ein Instrument, einmal für jedes: lines, nmea, modbus, obd oder replay, und wo es ist</translation>
    </message>
    <message>
        <source>An interval that allows for looking cannot be had from so few pairs.</source>
        <translation>Ein Intervall, das die Blicke berücksichtigt, ist mit so wenigen Paaren nicht zu gewinnen.</translation>
    </message>
    <message>
        <source>An overruled finding is kept with its reason; the run counts, and &apos;screen --apply&apos; leaves it alone.</source>
        <translation>Ein zurückgewiesener Befund bleibt mit seinem Grund erhalten; die Fahrt zählt, und „screen --apply“ lässt sie in Ruhe.</translation>
    </message>
    <message>
        <source>Another name for a configuration or a direction, in all runs</source>
        <translation>Eine Konfiguration oder Richtung umbenennen, in allen Fahrten</translation>
    </message>
    <message>
        <source>Any other property of a study for this call: fuel=diesel</source>
        <translation>Jede andere Eigenschaft einer Studie für diesen Aufruf: fuel=diesel</translation>
    </message>
    <message>
        <source>Any value: no colours.</source>
        <translation>Irgendein Wert: keine Farben.</translation>
    </message>
    <message>
        <source>Are the assumptions in order?</source>
        <translation>Sind die Annahmen erfüllt?</translation>
    </message>
    <message>
        <source>As JSON, for programs</source>
        <translation>Als JSON, für Programme</translation>
    </message>
    <message>
        <source>As a table in Markdown</source>
        <translation>Als Tabelle in Markdown</translation>
    </message>
    <message>
        <source>As the rig calls it</source>
        <translation>Wie die Messausrüstung ihn nennt</translation>
    </message>
    <message>
        <source>Ask a task for more with: bothways rig try --help</source>
        <translation>Mehr zu einer Aufgabe mit: bothways rig try --help</translation>
    </message>
    <message>
        <source>Assumed, as nothing says otherwise: a stretch of {} km (--stretch-km).</source>
        <translation>Angenommen, da nichts anderes gesagt ist: eine Messstrecke von {} km (--stretch-km).</translation>
    </message>
    <message>
        <source>Assumed, as nothing says otherwise: {}.</source>
        <translation>Angenommen, da nichts anderes angegeben ist: {}.</translation>
    </message>
    <message>
        <source>Battery {} V higher than at the start</source>
        <translation>Batterie {} V höher als am Anfang</translation>
    </message>
    <message>
        <source>Battery {} V lower than at the start</source>
        <translation>Batterie {} V niedriger als am Anfang</translation>
    </message>
    <message>
        <source>Before the first run</source>
        <translation>Vor der ersten Fahrt</translation>
    </message>
    <message>
        <source>Begin a new study.</source>
        <translation>Eine neue Studie beginnen.</translation>
    </message>
    <message>
        <source>Begin and end runs by what is recorded: by marks, position or speed; without road_speed.target_kmh the speed that was held longest cuts at the end</source>
        <translation>Fahrten durch das beginnen und beenden, was aufgezeichnet wird: durch Marken (marks), Position (position) oder Geschwindigkeit (speed); ohne road_speed.target_kmh schneidet am Ende die am längsten gehaltene Geschwindigkeit</translation>
    </message>
    <message>
        <source>Begin with a run sheet that you have:</source>
        <translation>Beginnen Sie mit einem Fahrtenblatt, das Sie haben:</translation>
    </message>
    <message>
        <source>Between the studies the true effect scatters by {} % (I² = {} %). With few studies neither is known well, and a study left in the drawer is in no table.</source>
        <translation>Zwischen den Studien streut der wahre Effekt um {} % (I² = {} %). Bei wenigen Studien ist beides nicht gut bekannt, und eine Studie, die in der Schublade blieb, steht in keiner Tabelle.</translation>
    </message>
    <message>
        <source>Blind screening</source>
        <translation>Blinde Sichtung</translation>
    </message>
    <message>
        <source>Block means: few numbers, but the only way that stays honest when something besides the device changes at a switch</source>
        <translation>Blockmittel: wenige Zahlen, aber der einzige Weg, der ehrlich bleibt, wenn sich beim Wechsel noch etwas anderes ändert als das Gerät</translation>
    </message>
    <message>
        <source>Blocks in driving order (default ABA)</source>
        <translation>Blöcke in der Reihenfolge des Fahrens (Vorgabe ABA)</translation>
    </message>
    <message>
        <source>Bothways keeps the log of fuel-economy runs driven out and back, baseline - device -
baseline, finds the runs that cannot be used, and says whether there is an effect,
how large, and how sure. FILE is a study (NAME.bothways) or a run sheet (CSV).
</source>
        <translation>Bothways führt Buch über Verbrauchsfahrten hin und zurück, Referenz - Gerät -
Referenz, findet die Fahrten, die sich nicht verwenden lassen, und sagt, ob es
einen Effekt gibt, wie groß er ist und wie sicher. DATEI ist eine Studie
(NAME.bothways) oder ein Fahrtenblatt (CSV).
</translation>
    </message>
    <message>
        <source>Bracketing compares each device block with the line between its two neighbouring baseline blocks</source>
        <translation>Die Eingabelung vergleicht jeden Geräteblock mit der Geraden zwischen seinen beiden benachbarten Referenzblöcken</translation>
    </message>
    <message>
        <source>Bring a run sheet, or a data logger&apos;s recording, into a study</source>
        <translation>Ein Fahrtenblatt oder die Aufzeichnung eines Datenloggers in eine Studie übernehmen</translation>
    </message>
    <message>
        <source>Broken pipe</source>
        <translation>Die Pipe ist geschlossen</translation>
    </message>
    <message>
        <source>By setting</source>
        <translation>Nach Einstellung</translation>
    </message>
    <message>
        <source>By the air alone, {} would have used {}: little beside the interval. No correction is made.</source>
        <translation>Allein durch die Luft hätte {} {} verbraucht: wenig neben dem Intervall. Korrigiert wird nicht.</translation>
    </message>
    <message>
        <source>By the air alone, {} would have used {}: too much beside this interval. No correction is made; drive again in air that keeps still.</source>
        <translation>Allein durch die Luft hätte {} {} verbraucht: zu viel neben diesem Intervall. Korrigiert wird nicht; fahren Sie noch einmal, wenn die Luft ruhig bleibt.</translation>
    </message>
    <message>
        <source>COLUMN=CHANNEL[,FACTOR[,OFFSET]]</source>
        <translation>SPALTE=KANAL[,FAKTOR[,VERSATZ]]</translation>
    </message>
    <message>
        <source>COLUMN=VALUE</source>
        <translation>SPALTE=WERT</translation>
    </message>
    <message>
        <source>COLUMNS</source>
        <translation>SPALTEN</translation>
    </message>
    <message>
        <source>CSV: {} column {}, {}.</source>
        <translation>CSV: {} Spalte, {}, {}.</translation>
    </message>
    <message>
        <source>CSV: {} columns {}, {}.</source>
        <translation>CSV: {} Spalten, {}, {}.</translation>
    </message>
    <message>
        <source>Caution: a straight drift is taken out, a curved one (an engine that is not warm yet) is not.</source>
        <translation>Vorsicht: Eine geradlinige Drift wird herausgerechnet, eine gekrümmte (ein noch nicht warmer Motor) nicht.</translation>
    </message>
    <message>
        <source>Caution: one switch only. Whatever drifts over the day is taken for an effect, and more pairs do not help.</source>
        <translation>Vorsicht: nur ein Wechsel. Was über den Tag driftet, wird für einen Effekt gehalten, und mehr Paare helfen nicht.</translation>
    </message>
    <message>
        <source>Caution: short on the road, but the design that a curved drift (an engine that is not warm yet) fools most.</source>
        <translation>Vorsicht: kurz auf der Straße, aber der Versuchsplan, den eine gekrümmte Drift (ein noch nicht warmer Motor) am meisten täuscht.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Hinweise zur Sicherheit</translation>
    </message>
    <message>
        <source>Change columns of one run or several</source>
        <translation>Spalten einer Fahrt oder mehrerer Fahrten ändern</translation>
    </message>
    <message>
        <source>Charge the battery before the next run, or let it rest.</source>
        <translation>Die Batterie vor der nächsten Fahrt laden oder ruhen lassen.</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Checks of the assumptions</source>
        <translation>Prüfungen der Annahmen</translation>
    </message>
    <message>
        <source>Cold start only {} min ago</source>
        <translation>Kaltstart erst vor {} min</translation>
    </message>
    <message>
        <source>Colours: system, light or dark.</source>
        <translation>Farben: system, light oder dark.</translation>
    </message>
    <message>
        <source>Companions</source>
        <translation>Gegenproben</translation>
    </message>
    <message>
        <source>Confidence of the interval (default 0.95)</source>
        <translation>Konfidenz des Intervalls (Vorgabe 0.95)</translation>
    </message>
    <message>
        <source>Confidence of the intervals, above 0.5, at most 0.9999 (default 0.95)</source>
        <translation>Vertrauensniveau der Intervalle, über 0.5, höchstens 0.9999 (Vorgabe 0.95)</translation>
    </message>
    <message>
        <source>Configuration of the parts that are no run of the study yet</source>
        <translation>Konfiguration der Teile, die noch keine Fahrt der Studie sind</translation>
    </message>
    <message>
        <source>Consumption is taken relative to the control vehicle that drove in step.</source>
        <translation>Der Verbrauch ist auf das Kontrollfahrzeug bezogen, das im Gleichschritt mitfuhr.</translation>
    </message>
    <message>
        <source>Consumption of the baseline, L/100 km (default 8); electric: kWh/100 km (default 18)</source>
        <translation>Verbrauch der Referenz, l/100 km (Vorgabe 8); elektrisch: kWh/100 km (Vorgabe 18)</translation>
    </message>
    <message>
        <source>Consumption of {} pairs in {} blocks, {} discarded runs</source>
        <translation>Verbrauch von {} Paaren in {} Blöcken, verworfene Fahrten: {}</translation>
    </message>
    <message>
        <source>Consumption taken from the recording: {}.</source>
        <translation>Verbrauch aus der Aufzeichnung übernommen: {}.</translation>
    </message>
    <message>
        <source>Correct the run that was typed twice.</source>
        <translation>Die doppelt eingegebene Fahrt berichtigen.</translation>
    </message>
    <message>
        <source>Could not convert: {} = {}</source>
        <translation>Falscher Wert: {} = {}</translation>
    </message>
    <message>
        <source>Counted again</source>
        <translation>Wieder gewertet</translation>
    </message>
    <message>
        <source>Counted, but without a partner in its block: run {}.</source>
        <translation>Gewertet, aber ohne Partner im eigenen Block: Fahrt {}.</translation>
    </message>
    <message>
        <source>Counted, but without a partner in their block: runs {}.</source>
        <translation>Gewertet, aber ohne Partner im eigenen Block: Fahrten {}.</translation>
    </message>
    <message>
        <source>Counting began too early</source>
        <translation>Zu früh gemessen</translation>
    </message>
    <message>
        <source>Cut the recording into runs: by the run sheet&apos;s times, marks in it (&quot;start&quot;, &quot;end&quot;), gates passed, or a speed that was held: the study&apos;s road_speed.target_kmh, else the one held longest, which is said</source>
        <translation>Die Aufzeichnung in Fahrten schneiden: nach den Zeiten des Fahrtenblatts, nach Marken darin („start“, „end“), nach durchfahrenen Toren oder nach einer gehaltenen Geschwindigkeit: road_speed.target_kmh der Studie, sonst die am längsten gehaltene, die dann genannt wird</translation>
    </message>
    <message>
        <source>DESCRIPTION</source>
        <comment>of a manual page</comment>
        <translation>BESCHREIBUNG</translation>
    </message>
    <message>
        <source>Date of a sheet that has times of day only</source>
        <translation>Datum eines Blatts, das nur Uhrzeiten hat</translation>
    </message>
    <message>
        <source>Dealing the labels A and B again over the pairs asks how often chance alone would look like this: {}, over all {} deals. The labels were not drawn by lot, so this p is exact only if pairs could be swapped where there is no effect.</source>
        <translation>Das Vertauschen der Zuordnung fragt, wie oft der Zufall allein so aussähe, wenn man A und B neu auf die Paare verteilt: {}, über alle {} Verteilungen. Die Zuordnung wurde nicht ausgelost; dieses p ist deshalb nur dann exakt, wenn die Paare ohne Effekt austauschbar wären.</translation>
    </message>
    <message>
        <source>Dealing the labels A and B again over the pairs asks how often chance alone would look like this: {}, over {} random deals. The labels were not drawn by lot, so this p is exact only if pairs could be swapped where there is no effect.</source>
        <translation>Das Vertauschen der Zuordnung fragt, wie oft der Zufall allein so aussähe, wenn man A und B neu auf die Paare verteilt: {}, über {} zufällige Verteilungen. Die Zuordnung wurde nicht ausgelost; dieses p ist deshalb nur dann exakt, wenn die Paare ohne Effekt austauschbar wären.</translation>
    </message>
    <message>
        <source>Dealing the labels A and B again over the pairs asks how often chance alone would look like this; not to be had from these runs.</source>
        <translation>Das Vertauschen der Zuordnung fragt, wie oft der Zufall allein so aussähe, wenn man A und B neu auf die Paare verteilt; mit diesen Fahrten nicht zu gewinnen.</translation>
    </message>
    <message>
        <source>Discarded</source>
        <translation>Verworfen</translation>
    </message>
    <message>
        <source>Discards put back</source>
        <translation>Verworfene Fahrten wieder gewertet</translation>
    </message>
    <message>
        <source>Disk quota exceeded</source>
        <translation>Der zugeteilte Speicherplatz ist verbraucht</translation>
    </message>
    <message>
        <source>Distance {} % too long</source>
        <translation>Strecke {} % zu lang</translation>
    </message>
    <message>
        <source>Distance {} % too short</source>
        <translation>Strecke {} % zu kurz</translation>
    </message>
    <message>
        <source>Do again what was taken back</source>
        <translation>Wiederholen, was rückgängig gemacht wurde</translation>
    </message>
    <message>
        <source>Do not reset it during a run.</source>
        <translation>Während einer Fahrt nicht zurücksetzen.</translation>
    </message>
    <message>
        <source>Done again</source>
        <translation>Wiederhergestellt</translation>
    </message>
    <message>
        <source>Drive slips by {} %</source>
        <translation>Antrieb rutscht um {} %</translation>
    </message>
    <message>
        <source>Drive until the vehicle is warm, then begin.</source>
        <translation>Fahren, bis das Fahrzeug warm ist, dann beginnen.</translation>
    </message>
    <message>
        <source>Driven on {}{}. {} runs.</source>
        <translation>Gefahren am {}{}. Fahrten: {}.</translation>
    </message>
    <message>
        <source>ENVIRONMENT</source>
        <comment>of a manual page</comment>
        <translation>UMGEBUNGSVARIABLEN</translation>
    </message>
    <message>
        <source>Each day for itself</source>
        <translation>Jeder Tag für sich</translation>
    </message>
    <message>
        <source>Each day for itself: {} days, each with an effect of its own.</source>
        <translation>Jeder Tag für sich: {} Tage, jeder mit seinem eigenen Effekt.</translation>
    </message>
    <message>
        <source>Each day for itself: {}.</source>
        <translation>Jeder Tag für sich: {}.</translation>
    </message>
    <message>
        <source>Each day for itself; it takes two days that can tell the effect.</source>
        <translation>Jeder Tag für sich; nötig sind zwei Tage, die den Effekt erkennen lassen.</translation>
    </message>
    <message>
        <source>Each pair. Blue discs: baseline; orange squares: device; hollow: discarded runs; green: the model.</source>
        <translation>Jedes Paar. Blaue Kreise: Referenz; orange Quadrate: Gerät; hohl: verworfene Fahrten; grün: das Modell.</translation>
    </message>
    <message>
        <source>Each study with its {} interval, and what they say together. Grey band: the margin. Line: no effect.</source>
        <translation>Jede Studie mit ihrem {}-Intervall und was sie zusammen sagen. Graues Band: die Relevanzschwelle. Linie: kein Effekt.</translation>
    </message>
    <message>
        <source>Each time just above that output: that hints at a slipping drive or a current limit. It is a hint, not a fact.</source>
        <translation>Jedes Mal knapp über dieser Leistung: Das deutet auf einen rutschenden Antrieb oder eine Strombegrenzung. Es ist ein Anhaltspunkt, keine Tatsache.</translation>
    </message>
    <message>
        <source>Effect that such a day finds 80 times in 100: the smallest |δ| for which the non-central t with ncp = δ/(s·√v) leaves ±t(1 − α/2, df) that often.</source>
        <translation>Effekt, den ein solcher Tag in 80 von 100 Fällen findet: das kleinste |δ|, bei dem das nichtzentrale t mit ncp = δ/(s·√v) so oft außerhalb von ±t(1 − α/2, FG) liegt.</translation>
    </message>
    <message>
        <source>Effect {}, {} % interval {} to {}, margin {} %</source>
        <translation>Effekt {}, {}‑%-Intervall {} bis {}, Relevanzschwelle {} %</translation>
    </message>
    <message>
        <source>Effects with their intervals:</source>
        <translation>Effekte mit ihren Intervallen:</translation>
    </message>
    <message>
        <source>Efficiency from the engine to the wheels</source>
        <translation>Wirkungsgrad vom Motor bis zu den Rädern</translation>
    </message>
    <message>
        <source>Efficiency of the alternator</source>
        <translation>Wirkungsgrad der Lichtmaschine</translation>
    </message>
    <message>
        <source>Efficiency of the device&apos;s generator</source>
        <translation>Wirkungsgrad des Generators im Gerät</translation>
    </message>
    <message>
        <source>Efficiency of the engine for a little more work</source>
        <translation>Wirkungsgrad des Motors für ein wenig mehr Arbeit</translation>
    </message>
    <message>
        <source>Electrical output (default: that of the study&apos;s runs, else 600)</source>
        <translation>Elektrische Abgabeleistung (Vorgabe: die der Fahrten der Studie, sonst 600)</translation>
    </message>
    <message>
        <source>Ends by itself after so many minutes</source>
        <translation>Endet nach so vielen Minuten von selbst</translation>
    </message>
    <message>
        <source>Engine and tyres warm; time of the cold start: ________</source>
        <translation>Motor und Reifen warm; Uhrzeit des Kaltstarts: ________</translation>
    </message>
    <message>
        <source>Every change and every look at the verdict, oldest first, in UTC. Nothing is ever taken out of it.</source>
        <translation>Jede Änderung und jeder Blick auf das Urteil, das Älteste zuerst, in UTC. Nichts wird je herausgenommen.</translation>
    </message>
    <message>
        <source>Every change and every look at the verdict, with its time</source>
        <translation>Jede Änderung und jeder Blick auf das Urteil, mit der Zeit</translation>
    </message>
    <message>
        <source>Every run</source>
        <translation>Alle Fahrten</translation>
    </message>
    <message>
        <source>Every run, as the day was</source>
        <translation>Alle Fahrten, wie der Tag war</translation>
    </message>
    <message>
        <source>Example:</source>
        <translation>Beispiel:</translation>
    </message>
    <message>
        <source>Excludes</source>
        <translation>Nicht mit</translation>
    </message>
    <message>
        <source>Exit codes:</source>
        <translation>Rückgabewerte:</translation>
    </message>
    <message>
        <source>FILE</source>
        <translation>DATEI</translation>
    </message>
    <message>
        <source>FOLDER</source>
        <translation>ORDNER</translation>
    </message>
    <message>
        <source>FUEL</source>
        <translation>KRAFTSTOFF</translation>
    </message>
    <message>
        <source>Factor and offset of a channel from two readings of a true meter</source>
        <translation>Faktor und Versatz eines Kanals aus zwei Ablesungen eines richtigen Messgeräts</translation>
    </message>
    <message>
        <source>File name too long</source>
        <translation>Der Dateiname ist zu lang</translation>
    </message>
    <message>
        <source>File too large</source>
        <translation>Die Datei ist zu groß</translation>
    </message>
    <message>
        <source>Find the fewest pairs a block that show this effect, per cent</source>
        <translation>Die kleinste Zahl von Paaren je Block finden, die diesen Effekt zeigt, in Prozent</translation>
    </message>
    <message>
        <source>Finding overruled</source>
        <translation>Befund zurückgewiesen</translation>
    </message>
    <message>
        <source>Finding stands again</source>
        <translation>Befund gilt wieder</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Finds: the smallest effect that would be found with the power asked for. The last five columns: how often an interval that promises the confidence asked for keeps it, simulated with a fixed seed: on a still day; with a drift of 1 % an hour; with one that bends by 1 % an hour squared; when each switch changes the level by some 0.5 %; when a pair resembles the one before (0.6).</source>
        <translation>Findet: der kleinste Effekt, der mit der verlangten Trennschärfe gefunden würde. Die letzten fünf Spalten: wie oft ein Intervall das verlangte Vertrauensniveau einhält, simuliert mit festem Startwert: an einem ruhigen Tag; bei einer Drift von 1 % je Stunde; bei einer, die sich um 1 % je Stunde im Quadrat krümmt; wenn jeder Wechsel das Niveau um etwa 0,5 % ändert; wenn ein Paar dem vorigen ähnelt (0,6).</translation>
    </message>
    <message>
        <source>For --cut position: LAT,LON,LAT,LON[,METRES]</source>
        <translation>Für --cut position: BREITE,LÄNGE,BREITE,LÄNGE[,METER]</translation>
    </message>
    <message>
        <source>Fragile: another honest way to the same number disagrees: {}.</source>
        <translation>Nicht robust: Ein anderer ehrlicher Weg zur selben Zahl widerspricht: {}.</translation>
    </message>
    <message>
        <source>From the first {} block to the last the day itself moved: {} ({} interval: {}), within the noise.</source>
        <translation>Vom ersten bis zum letzten Block mit {} hat sich der Tag selbst verschoben: {} ({}-Intervall: {}), im Rahmen des Rauschens.</translation>
    </message>
    <message>
        <source>From the first {} block to the last the day itself moved: {} ({} interval: {}). A straight drift is taken out of the effect, a bent one is not.</source>
        <translation>Vom ersten bis zum letzten Block mit {} hat sich der Tag selbst verschoben: {} ({}-Intervall: {}). Eine geradlinige Drift wird aus dem Effekt herausgerechnet, eine gekrümmte nicht.</translation>
    </message>
    <message>
        <source>GPX track points: position, speed and distance come from them.</source>
        <translation>GPX-Wegpunkte: Position, Geschwindigkeit und Strecke stammen aus ihnen.</translation>
    </message>
    <message>
        <source>Give back the runs (CSV, JSON) or the pairs (CSV)</source>
        <translation>Die Fahrten (CSV, JSON) oder die Paare (CSV) ausgeben</translation>
    </message>
    <message>
        <source>Go back to the target speed. If it was long, drive the run again.</source>
        <translation>Zurück zur Zielgeschwindigkeit. War es lang, die Fahrt wiederholen.</translation>
    </message>
    <message>
        <source>Gust</source>
        <translation>Böe</translation>
    </message>
    <message>
        <source>Gust or passing vehicle</source>
        <translation>Böe oder vorbeifahrendes Fahrzeug</translation>
    </message>
    <message>
        <source>HEADER=COLUMN</source>
        <translation>ÜBERSCHRIFT=SPALTE</translation>
    </message>
    <message>
        <source>Headline, companions and settings</source>
        <translation>Hauptergebnis, Gegenproben und Einstellungen</translation>
    </message>
    <message>
        <source>Headline, companions and settings. Thin: the Bonferroni interval.</source>
        <translation>Hauptergebnis, Gegenproben und Einstellungen. Dünn: das Bonferroni-Intervall.</translation>
    </message>
    <message>
        <source>How far the rotor slows the air (default 1/3)</source>
        <translation>Wie weit der Rotor die Luft bremst (Vorgabe 1/3)</translation>
    </message>
    <message>
        <source>How fragile is it?</source>
        <translation>Wie robust ist es?</translation>
    </message>
    <message>
        <source>How often it should be found (default 0.8)</source>
        <translation>Wie oft er gefunden werden soll (Vorgabe 0.8)</translation>
    </message>
    <message>
        <source>How sure, how fragile</source>
        <translation>Wie sicher, wie robust</translation>
    </message>
    <message>
        <source>How they are pooled</source>
        <translation>Wie sie zusammengefasst werden</translation>
    </message>
    <message>
        <source>How wide the interval will be: as the verdict takes it, with a straight drift; if the drift may bend; and if the result may be looked at as often as one likes on the way.</source>
        <translation>Wie breit das Intervall sein wird: so, wie das Urteil es nimmt, mit geradliniger Drift; wenn die Drift gekrümmt sein darf; und wenn das Ergebnis unterwegs beliebig oft angesehen werden darf.</translation>
    </message>
    <message>
        <source>INSTRUMENT</source>
        <translation>MESSGERÄT</translation>
    </message>
    <message>
        <source>INT</source>
        <translation>ZAHL</translation>
    </message>
    <message>
        <source>In block {} there are more runs within reach of one another than exact pairing can weigh; they were paired in order.</source>
        <translation>In Block {} liegen mehr Fahrten in Reichweite voneinander, als die exakte Paarung abwägen kann; sie wurden der Reihe nach gepaart.</translation>
    </message>
    <message>
        <source>In per cent: 100·(exp(δ) − 1). Below zero: the device used less.</source>
        <translation>In Prozent: 100·(exp(δ) − 1). Unter null: Das Gerät verbrauchte weniger.</translation>
    </message>
    <message>
        <source>Input/output error</source>
        <translation>Ein-/Ausgabefehler</translation>
    </message>
    <message>
        <source>Interim: the plan is not driven to its end. Stopping at the first &apos;less&apos; or &apos;more&apos; gives some 15 % false alarms where 5 % are promised.</source>
        <translation>Vorläufig: Der Plan ist nicht zu Ende gefahren. Wer beim ersten „weniger“ oder „mehr“ aufhört, hat etwa 15 % Fehlalarme, wo 5 % versprochen sind.</translation>
    </message>
    <message>
        <source>Is a directory</source>
        <translation>ist ein Ordner</translation>
    </message>
    <message>
        <source>Is there an effect, how large, how sure? Several files: a table</source>
        <translation>Gibt es einen Effekt, wie groß, wie sicher? Mehrere Dateien: eine Tabelle</translation>
    </message>
    <message>
        <source>It holds if each pair&apos;s error is its own; if neighbours resemble each other, the verdict would be: {}.</source>
        <translation>Es gilt, wenn der Fehler jedes Paars sein eigener ist; ähneln Nachbarn einander, so lautete das Urteil: {}.</translation>
    </message>
    <message>
        <source>It holds if each pair&apos;s error is its own; if neighbours resemble each other, these runs cannot tell.</source>
        <translation>Es gilt, wenn der Fehler jedes Paars sein eigener ist; ähneln Nachbarn einander, so lassen diese Fahrten keine Entscheidung zu.</translation>
    </message>
    <message>
        <source>It stands in the history and the report, its numbers in the run that is driven next.</source>
        <translation>Er steht im Verlauf und im Bericht, seine Zahlen bei der Fahrt, die als Nächstes gefahren wird.</translation>
    </message>
    <message>
        <source>It was looked at once before, at fewer pairs: whoever may stop when the answer suits is wrong more often than promised.</source>
        <translation>Es wurde schon einmal angesehen, bei weniger Paaren: Wer aufhören darf, wenn ihm die Antwort passt, irrt öfter als versprochen.</translation>
    </message>
    <message>
        <source>It was looked at {} times before, at fewer pairs: whoever may stop when the answer suits is wrong more often than promised.</source>
        <translation>Es wurde schon {} Mal angesehen, bei weniger Paaren: Wer aufhören darf, wenn ihm die Antwort passt, irrt öfter als versprochen.</translation>
    </message>
    <message>
        <source>JSON</source>
        <translation>JSON</translation>
    </message>
    <message>
        <source>KIND:ADDRESS</source>
        <translation>ART:ADRESSE</translation>
    </message>
    <message>
        <source>KIND:ADDRESS. Kinds: lines, nmea, modbus, obd, replay. Addresses: serial:PORT,BAUD, tcp:HOST:PORT, udp:*:PORT, file:PATH</source>
        <translation>ART:ADRESSE. Arten: lines, nmea, modbus, obd, replay. Adressen: serial:PORT,BAUD, tcp:HOST:PORT, udp:*:PORT, file:PFAD</translation>
    </message>
    <message>
        <source>Keep preferences in FILE (INI).</source>
        <translation>Einstellungen in DATEI halten (INI).</translation>
    </message>
    <message>
        <source>Keep the instruments of a car under a name</source>
        <translation>Die Messgeräte eines Autos unter einem Namen aufbewahren</translation>
    </message>
    <message>
        <source>L</source>
        <comment>litres</comment>
        <translation>l</translation>
    </message>
    <message>
        <source>L,M,H</source>
        <comment>low, middle, high</comment>
        <translation>U,M,O</translation>
    </message>
    <message>
        <source>L/100 km</source>
        <translation>l/100 km</translation>
    </message>
    <message>
        <source>L/100 km above 0</source>
        <translation>l/100 km über 0</translation>
    </message>
    <message>
        <source>L/h</source>
        <translation>l/h</translation>
    </message>
    <message>
        <source>LANGUAGE</source>
        <translation>SPRACHE</translation>
    </message>
    <message>
        <source>LAT,LON,LAT,LON[,METRES]</source>
        <translation>BREITE,LÄNGE,BREITE,LÄNGE[,METER]</translation>
    </message>
    <message>
        <source>LINES</source>
        <translation>ZEILEN</translation>
    </message>
    <message>
        <source>Language of what is said to people: {} (default: that of LC_ALL, LC_MESSAGES or LANG). JSON and CSV do not change</source>
        <translation>Sprache dessen, was Menschen gesagt wird: {} (Vorgabe: die aus LC_ALL, LC_MESSAGES oder LANG). JSON und CSV ändern sich nicht</translation>
    </message>
    <message>
        <source>Large text.</source>
        <translation>Große Schrift.</translation>
    </message>
    <message>
        <source>Least squares over the &lt;i&gt;n&lt;/i&gt; pairs, with &lt;i&gt;x&lt;/i&gt; = 1 for the device and 0 for the baseline, &lt;i&gt;t&lt;/i&gt; the time of the pair:</source>
        <translation>Kleinste Quadrate über die &lt;i&gt;n&lt;/i&gt; Paare, mit &lt;i&gt;x&lt;/i&gt; = 1 für das Gerät und 0 für die Referenz, &lt;i&gt;t&lt;/i&gt; die Zeit des Paars:</translation>
    </message>
    <message>
        <source>Least squares over the pairs: the answer of this page.</source>
        <translation>Kleinste Quadrate über die Paare: die Antwort dieser Seite.</translation>
    </message>
    <message>
        <source>Leave out what a finding spoils, for this call</source>
        <translation>Weglassen, was ein Befund unbrauchbar macht, für diesen Aufruf</translation>
    </message>
    <message>
        <source>Leave the setting alone. Turn and drive the run again.</source>
        <translation>Die Einstellung nicht ändern. Wenden und die Fahrt wiederholen.</translation>
    </message>
    <message>
        <source>Leaving pairs out one by one needs a verdict.</source>
        <translation>Einzelne Paare wegzulassen, setzt ein Urteil voraus.</translation>
    </message>
    <message>
        <source>Length of the stretch, km; &apos;4 mi&apos; is taken too (default: that of the study, else 5)</source>
        <translation>Länge der Messstrecke in km; auch „4 mi“ (Vorgabe: die der Studie, sonst 5)</translation>
    </message>
    <message>
        <source>Let the finding stand again</source>
        <translation>Den Befund wieder gelten lassen</translation>
    </message>
    <message>
        <source>Lift a discard: the runs count again</source>
        <translation>Ein Verwerfen aufheben: die Fahrten zählen wieder</translation>
    </message>
    <message>
        <source>Limit {} is not set</source>
        <translation>Grenze {} ist nicht gesetzt</translation>
    </message>
    <message>
        <source>Limits of the rules</source>
        <translation>Grenzen der Regeln</translation>
    </message>
    <message>
        <source>Limits of this study</source>
        <translation>Grenzen dieser Studie</translation>
    </message>
    <message>
        <source>List the runs with state, reason, pair and findings</source>
        <translation>Die Fahrten auflisten, mit Zustand, Grund, Paar und Befunden</translation>
    </message>
    <message>
        <source>Load lost at {} rpm</source>
        <translation>Last verloren bei {} U/min</translation>
    </message>
    <message>
        <source>Logger runs, memory card empty, clock right</source>
        <translation>Logger läuft, Speicherkarte leer, Uhr richtig</translation>
    </message>
    <message>
        <source>Logs out-and-back fuel-economy test runs and says whether there is an effect.</source>
        <translation>Hält Verbrauchsfahrten hin und zurück fest und sagt, ob es einen Effekt gibt.</translation>
    </message>
    <message>
        <source>Look at its plug and cable.</source>
        <translation>Stecker und Kabel prüfen.</translation>
    </message>
    <message>
        <source>Look at plug and cable of {}.</source>
        <translation>Stecker und Kabel von {} prüfen.</translation>
    </message>
    <message>
        <source>Look at start and end of the stretch, then drive the run again.</source>
        <translation>Anfang und Ende der Messstrecke prüfen, dann die Fahrt wiederholen.</translation>
    </message>
    <message>
        <source>Look at wiring and load before the next run.</source>
        <translation>Vor der nächsten Fahrt Leitungen und Last prüfen.</translation>
    </message>
    <message>
        <source>Look for runs that cannot be used, and why</source>
        <translation>Nach Fahrten suchen, die sich nicht verwenden lassen, und warum</translation>
    </message>
    <message>
        <source>Look whether the device follows its set point; set it again.</source>
        <translation>Prüfen, ob das Gerät dem Sollwert folgt; neu einstellen.</translation>
    </message>
    <message>
        <source>Lower heating value of the fuel, MJ/L; electric: MJ/kWh</source>
        <translation>Unterer Heizwert des Kraftstoffs, MJ/l; elektrisch: MJ/kWh</translation>
    </message>
    <message>
        <source>MIN</source>
        <comment>minutes</comment>
        <translation>MIN</translation>
    </message>
    <message>
        <source>MJ/L above 0</source>
        <translation>MJ/l über 0</translation>
    </message>
    <message>
        <source>Made from</source>
        <translation>Erstellt aus</translation>
    </message>
    <message>
        <source>Make an empty study</source>
        <translation>Eine leere Studie anlegen</translation>
    </message>
    <message>
        <source>Measured by the study&apos;s runs, beside it: {} ({} interval: {}); expected for the device alone: {}.</source>
        <translation>Daneben, an den Fahrten der Studie gemessen: {} ({}-Intervall: {}); vom Gerät allein zu erwarten: {}.</translation>
    </message>
    <message>
        <source>Minutes a pair (default 15)</source>
        <translation>Minuten je Paar (Vorgabe 15)</translation>
    </message>
    <message>
        <source>Minutes a switch (default 20)</source>
        <translation>Minuten je Wechsel (Vorgabe 20)</translation>
    </message>
    <message>
        <source>More to this verdict:</source>
        <translation>Weiteres zu diesem Urteil:</translation>
    </message>
    <message>
        <source>NAME</source>
        <translation>NAME</translation>
    </message>
    <message>
        <source>NAME</source>
        <comment>of a manual page</comment>
        <translation>BEZEICHNUNG</translation>
    </message>
    <message>
        <source>NAME</source>
        <comment>of a part of the window</comment>
        <translation>NAME</translation>
    </message>
    <message>
        <source>NAME</source>
        <comment>of colours</comment>
        <translation>NAME</translation>
    </message>
    <message>
        <source>NAME=VALUE</source>
        <translation>NAME=WERT</translation>
    </message>
    <message>
        <source>NAMES</source>
        <translation>NAMEN</translation>
    </message>
    <message>
        <source>NEW</source>
        <translation>NEU</translation>
    </message>
    <message>
        <source>NMEA sentences: position, speed and distance come from them.</source>
        <translation>NMEA-Sätze: Position, Geschwindigkeit und Strecke stammen aus ihnen.</translation>
    </message>
    <message>
        <source>NUMBER</source>
        <translation>ZAHL</translation>
    </message>
    <message>
        <source>Names: name, date, baseline, margin (per cent), confidence, max_gap (min), aero_share,
fuel (petrol, e10, diesel, electric), bearing_deg, cold_start, claim (per cent,
negative for less), noise (per cent and degrees of freedom, like 0.9,21), noise.from,
notes, walk_round (lines, with ; between), plan.sequence, plan.pairs, plan.margin,
plan.confidence, accessory_timer.NAME=WATTS,MINUTES, and the limits of the screening rules:</source>
        <translation>Namen: name, date, baseline, margin (Prozent), confidence, max_gap (min), aero_share,
fuel (petrol, e10, diesel oder electric), bearing_deg, cold_start, claim (Prozent,
negativ für weniger), noise (Prozent und Freiheitsgrade, wie 0.9,21), noise.from,
notes, walk_round (Zeilen, mit ; dazwischen), plan.sequence, plan.pairs, plan.margin,
plan.confidence, accessory_timer.NAME=WATT,MINUTEN und die Grenzen der Sichtungsregeln:</translation>
    </message>
    <message>
        <source>Near over-speed: {} of {} rpm</source>
        <translation>Nahe der Überdrehzahl: {} von {} U/min</translation>
    </message>
    <message>
        <source>Needs</source>
        <translation>Nur mit</translation>
    </message>
    <message>
        <source>No bend in the drift is seen {}.</source>
        <translation>In der Drift ist keine Krümmung zu sehen {}.</translation>
    </message>
    <message>
        <source>No channel {}</source>
        <translation>Kein Kanal {}</translation>
    </message>
    <message>
        <source>No consumption, neither typed nor recorded, so not used: {}.</source>
        <translation>Kein Verbrauch, weder eingegeben noch aufgezeichnet, also nicht benutzt: {}.</translation>
    </message>
    <message>
        <source>No difference as large as {} % between {} and {}: the effect lies between {} ({} interval).</source>
        <translation>Kein Unterschied von {} % oder mehr zwischen {} und {}: Der Effekt liegt zwischen {} ({}-Intervall).</translation>
    </message>
    <message>
        <source>No pair can be spared: without any one of the {} there is no verdict.</source>
        <translation>Kein Paar ist entbehrlich: Ohne eines der {} gibt es kein Urteil.</translation>
    </message>
    <message>
        <source>No rule that could be checked found anything.</source>
        <translation>Keine Regel, die geprüft werden konnte, hat etwas gefunden.</translation>
    </message>
    <message>
        <source>No run was discarded, so the discards did not choose this result.</source>
        <translation>Keine Fahrt wurde verworfen; das Verwerfen hat dieses Ergebnis also nicht ausgesucht.</translation>
    </message>
    <message>
        <source>No runs yet.</source>
        <translation>Noch keine Fahrten.</translation>
    </message>
    <message>
        <source>No samples of {}</source>
        <translation>Keine Messwerte von {}</translation>
    </message>
    <message>
        <source>No space left on device</source>
        <translation>kein Platz mehr auf dem Datenträger</translation>
    </message>
    <message>
        <source>No such file or directory</source>
        <translation>Datei oder Ordner nicht gefunden</translation>
    </message>
    <message>
        <source>No verdict: by their times, drift and effect cannot be told apart in these pairs. Check the start times, or drive another block.</source>
        <translation>Kein Urteil: Nach ihren Zeiten lassen sich Drift und Effekt bei diesen Paaren nicht trennen. Prüfen Sie die Startzeiten, oder fahren Sie einen weiteren Block.</translation>
    </message>
    <message>
        <source>No verdict: every run is discarded.</source>
        <translation>Kein Urteil: Alle Fahrten sind verworfen.</translation>
    </message>
    <message>
        <source>No verdict: only {} has runs that count. The comparison needs the other configuration, too.</source>
        <translation>Kein Urteil: Nur {} hat Fahrten, die zählen. Der Vergleich braucht auch die andere Konfiguration.</translation>
    </message>
    <message>
        <source>No verdict: the readings agree to the last digit, so there is no noise to judge by. Were they copied, or is the display too coarse?</source>
        <translation>Kein Urteil: Die Ablesungen stimmen bis zur letzten Stelle überein; es gibt also kein Rauschen, an dem sich messen ließe. Wurden sie kopiert, oder ist die Anzeige zu grob?</translation>
    </message>
    <message>
        <source>No verdict: there are no runs yet.</source>
        <translation>Kein Urteil: Es gibt noch keine Fahrten.</translation>
    </message>
    <message>
        <source>No verdict: {} pair of {} and {} of {}.</source>
        <translation>Kein Urteil: {} Paar mit {} und {} mit {}.</translation>
    </message>
    <message>
        <source>No verdict: {} pairs of {} and {} of {}.</source>
        <translation>Kein Urteil: {} Paare mit {} und {} mit {}.</translation>
    </message>
    <message>
        <source>Not a certification procedure. It says what these runs show about this vehicle on this stretch on these days.</source>
        <translation>Kein Zertifizierungsverfahren. Der Bericht sagt, was diese Fahrten über dieses Fahrzeug auf dieser Strecke an diesen Tagen zeigen.</translation>
    </message>
    <message>
        <source>Not a directory</source>
        <translation>Kein Ordner</translation>
    </message>
    <message>
        <source>Not checked (which is not the same as passed)</source>
        <translation>Nicht geprüft (was nicht dasselbe ist wie bestanden)</translation>
    </message>
    <message>
        <source>Not checked, which is not the same as passed:</source>
        <translation>Nicht geprüft, was nicht dasselbe ist wie bestanden:</translation>
    </message>
    <message>
        <source>Not computed: it takes 4 degrees of freedom, for with fewer it could not fail, and at most 5,000 pairs.</source>
        <translation>Nicht berechnet: Nötig sind 4 Freiheitsgrade, denn mit weniger könnte die Prüfung nichts finden, und höchstens 5.000 Paare.</translation>
    </message>
    <message>
        <source>Not computed: it takes a closed design and two degrees of freedom to spare.</source>
        <translation>Nicht berechnet: Nötig sind ein geschlossener Versuchsplan und zwei übrige Freiheitsgrade.</translation>
    </message>
    <message>
        <source>Not computed: it takes a verdict and one degree of freedom to spare.</source>
        <translation>Nicht berechnet: Nötig sind ein Urteil und ein übriger Freiheitsgrad.</translation>
    </message>
    <message>
        <source>Not computed: it takes a verdict and pairs in order of time.</source>
        <translation>Nicht berechnet: Nötig sind ein Urteil und zeitlich geordnete Paare.</translation>
    </message>
    <message>
        <source>Not computed: it takes a verdict and readings in one unit.</source>
        <translation>Nicht berechnet: Nötig sind ein Urteil und Ablesungen in einer einzigen Einheit.</translation>
    </message>
    <message>
        <source>Not computed: it takes blocks of two pairs or more, and two degrees of freedom to spare.</source>
        <translation>Nicht berechnet: Nötig sind Blöcke aus zwei oder mehr Paaren und zwei übrige Freiheitsgrade.</translation>
    </message>
    <message>
        <source>Not computed: it takes pairs at different times, and two degrees of freedom to spare.</source>
        <translation>Nicht berechnet: Nötig sind Paare zu verschiedenen Zeiten und zwei übrige Freiheitsgrade.</translation>
    </message>
    <message>
        <source>Not computed: it takes temperature, pressure and humidity on paired runs of both configurations.</source>
        <translation>Nicht berechnet: Nötig sind Temperatur, Luftdruck und Luftfeuchte bei gepaarten Fahrten beider Konfigurationen.</translation>
    </message>
    <message>
        <source>Not computed: it takes two baseline blocks in one day, and a degree of freedom within blocks.</source>
        <translation>Nicht berechnet: Nötig sind zwei Referenzblöcke an einem Tag und ein Freiheitsgrad innerhalb der Blöcke.</translation>
    </message>
    <message>
        <source>Not computed: it takes two days that can each tell the effect.</source>
        <translation>Nicht berechnet: Nötig sind zwei Tage, die jeder für sich den Effekt erkennen lassen.</translation>
    </message>
    <message>
        <source>Not computed: it takes two degrees of freedom in each configuration alone.</source>
        <translation>Nicht berechnet: Nötig sind zwei Freiheitsgrade in jeder Konfiguration allein.</translation>
    </message>
    <message>
        <source>Not computed: it takes two degrees of freedom to spare.</source>
        <translation>Nicht berechnet: Nötig sind zwei übrige Freiheitsgrade.</translation>
    </message>
    <message>
        <source>Not each time, so output alone does not explain it.</source>
        <translation>Nicht jedes Mal, also erklärt die Leistung allein es nicht.</translation>
    </message>
    <message>
        <source>Note what passed. If it was close, drive the run again.</source>
        <translation>Notieren, was vorbeifuhr. War es nah, die Fahrt wiederholen.</translation>
    </message>
    <message>
        <source>Noted by hand: {}</source>
        <translation>Von Hand notiert: {}</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Anmerkungen</translation>
    </message>
    <message>
        <source>Nothing to pool: it takes two studies with an effect.</source>
        <translation>Nichts zusammenzufassen: Nötig sind zwei Studien mit einem Effekt.</translation>
    </message>
    <message>
        <source>Nothing was found in what could be checked.</source>
        <translation>In dem, was geprüft werden konnte, wurde nichts gefunden.</translation>
    </message>
    <message>
        <source>Nothing was found on a run that counts, in what could be checked.</source>
        <translation>An gewerteten Fahrten wurde in dem, was geprüft werden konnte, nichts gefunden.</translation>
    </message>
    <message>
        <source>Numbers of the runs (7, 7 9, 7-9,12), then what changes in each of them, by the columns of a run sheet</source>
        <translation>Nummern der Fahrten (7, 7 9, 7-9,12), dann was sich in jeder von ihnen ändert, mit den Spalten eines Fahrtenblatts</translation>
    </message>
    <message>
        <source>Numbers of the runs: 7, several like 7 9, or ranges like 7-9,12</source>
        <translation>Nummern der Fahrten: 7, mehrere wie 7 9 oder Bereiche wie 7-9,12</translation>
    </message>
    <message>
        <source>OLD</source>
        <translation>ALT</translation>
    </message>
    <message>
        <source>OPTIONS</source>
        <translation>OPTIONEN</translation>
    </message>
    <message>
        <source>ORDER</source>
        <translation>REIHENFOLGE</translation>
    </message>
    <message>
        <source>Of the CSV: an apostrophe before each text that a spreadsheet would take for a formula</source>
        <translation>In der CSV-Datei: ein Apostroph vor jedem Text, den eine Tabellenkalkulation für eine Formel hielte</translation>
    </message>
    <message>
        <source>Of the rig; or a file, NAME.json</source>
        <translation>Der Messausrüstung; oder eine Datei, NAME.json</translation>
    </message>
    <message>
        <source>Of the runs that the recording begins; without it, as they come next</source>
        <translation>Der Fahrten, die die Aufzeichnung beginnt; ohne dies, wie sie als Nächstes kommen</translation>
    </message>
    <message>
        <source>Of {} run that reached {} W, {} oversped ({} to {} % of such runs, at the study&apos;s confidence).</source>
        <translation>Von {} Fahrt, die {} W erreichte, ging bei {} der Rotor über die Drehzahlgrenze ({} bis {} % solcher Fahrten, auf dem Vertrauensniveau der Studie).</translation>
    </message>
    <message>
        <source>Of {} runs that reached {} W, {} oversped ({} to {} % of such runs, at the study&apos;s confidence).</source>
        <translation>Von {} Fahrten, die {} W erreichten, ging bei {} der Rotor über die Drehzahlgrenze ({} bis {} % solcher Fahrten, auf dem Vertrauensniveau der Studie).</translation>
    </message>
    <message>
        <source>On a study: discard every counted run that a finding spoils</source>
        <translation>Bei einer Studie: jede gewertete Fahrt verwerfen, die ein Befund unbrauchbar macht</translation>
    </message>
    <message>
        <source>On runs that are discarded already: {}</source>
        <translation>An bereits verworfenen Fahrten: {}</translation>
    </message>
    <message>
        <source>One HTML page that a stranger can check: verdict, pictures, every run</source>
        <translation>Eine HTML-Seite, die ein Fremder nachprüfen kann: Urteil, Bilder, jede Fahrt</translation>
    </message>
    <message>
        <source>One effect for all studies, if the device did the same to each: {}.</source>
        <translation>Ein Effekt für alle Studien, sofern das Gerät überall dasselbe bewirkt hat: {}.</translation>
    </message>
    <message>
        <source>One effect for all: weighted by what each design can tell, whatever its noise came out as; interval by Welch and Satterthwaite. Whether they agree: Welch&apos;s F (1951). The mean of effects of their own: DerSimonian and Laird&apos;s mean; its interval allows for noise that is known from few pairs.</source>
        <translation>Ein Effekt für alle: gewichtet danach, was jeder Versuchsplan erkennen kann, wie auch immer sein Rauschen ausfiel; Intervall nach Welch und Satterthwaite. Ob sie übereinstimmen: Welchs F (1951). Das Mittel eigener Effekte: nach DerSimonian und Laird; sein Intervall berücksichtigt, dass das Rauschen aus wenigen Paaren bekannt ist.</translation>
    </message>
    <message>
        <source>One pair scatters by {} % here and by {} % there ({} degrees of freedom).</source>
        <translation>Ein Paar streut hier um {} % und dort um {} % ({} Freiheitsgrade).</translation>
    </message>
    <message>
        <source>One pair scatters by {} % here and by {} % there ({}): the two are not comparable, so go by the headline.</source>
        <translation>Ein Paar streut hier um {} % und dort um {} % ({}): Die beiden sind nicht vergleichbar; richten Sie sich nach dem Hauptergebnis.</translation>
    </message>
    <message>
        <source>One switch only: whatever else changed over the day (wind, warmth, traffic) cannot be told from the effect. Go back to the first configuration and drive it again.</source>
        <translation>Nur ein Wechsel: Was sich über den Tag sonst noch änderte (Wind, Wärme, Verkehr), lässt sich nicht vom Effekt trennen. Kehren Sie zur ersten Konfiguration zurück und fahren Sie sie noch einmal.</translation>
    </message>
    <message>
        <source>Open the demo study.</source>
        <translation>Die Demo-Studie öffnen.</translation>
    </message>
    <message>
        <source>Open the study, or the newest one, in roadside mode.</source>
        <translation>Die Studie, oder die neueste, auf der Seite „Vor Ort“ öffnen.</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>Optionen</translation>
    </message>
    <message>
        <source>Other names, in large or small letters, with or without accents:</source>
        <translation>Andere Namen, groß oder klein geschrieben, mit oder ohne Akzente:</translation>
    </message>
    <message>
        <source>Other roads to the same number</source>
        <translation>Andere Wege zur selben Zahl</translation>
    </message>
    <message>
        <source>Other</source>
        <comment>something else that happened during the run</comment>
        <translation>Anderes</translation>
    </message>
    <message>
        <source>Out against return did not shift over time ({} an hour, {}).</source>
        <translation>Hin gegen zurück hat sich mit der Zeit nicht verschoben ({} je Stunde, {}).</translation>
    </message>
    <message>
        <source>Out against return perhaps shifted over time ({} an hour, {}): the wind turned or rose. Out and back cancels a steady wind only; compare &apos;bracket&apos;, and the wind noted.</source>
        <translation>Hin gegen zurück hat sich mit der Zeit vielleicht verschoben ({} je Stunde, {}): Der Wind drehte oder frischte auf. Hin und zurück hebt nur einen stetigen Wind auf; vergleichen Sie die Eingabelung und den notierten Wind.</translation>
    </message>
    <message>
        <source>Out against return shifted over time ({} an hour, {}): the wind turned or rose. Out and back cancels a steady wind only; compare &apos;bracket&apos;, and the wind noted.</source>
        <translation>Hin gegen zurück hat sich mit der Zeit verschoben ({} je Stunde, {}): Der Wind drehte oder frischte auf. Hin und zurück hebt nur einen stetigen Wind auf; vergleichen Sie die Eingabelung und den notierten Wind.</translation>
    </message>
    <message>
        <source>Out against return the effect is the same within the noise (apart by {} %, {}).</source>
        <translation>Hin und zurück ist der Effekt im Rahmen des Rauschens gleich (Unterschied {} %, {}).</translation>
    </message>
    <message>
        <source>Output and rotor speed at road speed</source>
        <translation>Leistung und Rotordrehzahl bei Fahrgeschwindigkeit</translation>
    </message>
    <message>
        <source>Output fell by {} %</source>
        <translation>Leistung um {} % gefallen</translation>
    </message>
    <message>
        <source>Over the rig that is there</source>
        <translation>Über die vorhandene Messausrüstung</translation>
    </message>
    <message>
        <source>Over-speed: {} rpm</source>
        <translation>Überdrehzahl: {} U/min</translation>
    </message>
    <message>
        <source>PATH[@SECONDS]</source>
        <translation>PFAD[@SEKUNDEN]</translation>
    </message>
    <message>
        <source>PCT</source>
        <translation>PROZENT</translation>
    </message>
    <message>
        <source>PROPERTIES</source>
        <translation>EIGENSCHAFTEN</translation>
    </message>
    <message>
        <source>Paint the runs of the study into FILE (PNG), small enough for a list of files, and end.</source>
        <translation>Die Fahrten der Studie in DATEI (PNG) malen, klein genug für eine Dateiliste, und enden.</translation>
    </message>
    <message>
        <source>Paint the window into FILE (PNG) and end.</source>
        <translation>Das Fenster in DATEI (PNG) malen und enden.</translation>
    </message>
    <message>
        <source>Pair tied</source>
        <translation>Paar verbunden</translation>
    </message>
    <message>
        <source>Pair untied</source>
        <translation>Paar gelöst</translation>
    </message>
    <message>
        <source>Pair {}{} lies farthest from the fit, {} times its expected scatter too high</source>
        <translation>Paar {}{} liegt am weitesten von der Anpassung entfernt, um das {}-Fache seiner erwarteten Streuung zu hoch</translation>
    </message>
    <message>
        <source>Pair {}{} lies farthest from the fit, {} times its expected scatter too low</source>
        <translation>Paar {}{} liegt am weitesten von der Anpassung entfernt, um das {}-Fache seiner erwarteten Streuung zu niedrig</translation>
    </message>
    <message>
        <source>Pairs a block (default 4)</source>
        <translation>Paare je Block (Vorgabe 4)</translation>
    </message>
    <message>
        <source>Pairs perhaps swing to and fro {}: something alternates from pair to pair. Look at who drove, the traffic lights, the fuel meter&apos;s rounding.</source>
        <translation>Die Paare pendeln vielleicht hin und her {}: Etwas wechselt von Paar zu Paar. Sehen Sie nach, wer fuhr, wie die Ampeln standen und wie die Verbrauchsanzeige rundet.</translation>
    </message>
    <message>
        <source>Pairs swing to and fro {}: something alternates from pair to pair. Look at who drove, the traffic lights, the fuel meter&apos;s rounding.</source>
        <translation>Die Paare pendeln hin und her {}: Etwas wechselt von Paar zu Paar. Sehen Sie nach, wer fuhr, wie die Ampeln standen und wie die Verbrauchsanzeige rundet.</translation>
    </message>
    <message>
        <source>Passing traffic</source>
        <translation>Verkehr</translation>
    </message>
    <message>
        <source>Permission denied</source>
        <translation>Zugriff verweigert</translation>
    </message>
    <message>
        <source>Pooled, if they ask the same question: {} ({} interval: {}; {}).</source>
        <translation>Zusammengefasst, sofern sie dieselbe Frage stellen: {} ({}-Intervall: {}; {}).</translation>
    </message>
    <message>
        <source>Positionals</source>
        <translation>Argumente</translation>
    </message>
    <message>
        <source>Positive: more energy. Low and high are the smallest and largest over all corners of the efficiencies, which are factors in use, not measurements of this vehicle.</source>
        <translation>Positiv: mehr Energie. Unten und oben sind der kleinste und der größte Wert über alle Ecken der Wirkungsgrade; das sind übliche Faktoren, keine Messungen an diesem Fahrzeug.</translation>
    </message>
    <message>
        <source>Positive: more fuel. Low and high are the smallest and largest over all corners of the efficiencies, which are factors in use, not measurements of this vehicle.</source>
        <translation>Positiv: mehr Kraftstoff. Niedrig und hoch sind der kleinste und der größte Wert über alle Ecken der Wirkungsgrade; diese sind gebräuchliche Faktoren, keine Messungen an diesem Fahrzeug.</translation>
    </message>
    <message>
        <source>Properties and runs as JSON</source>
        <translation>Eigenschaften und Fahrten als JSON</translation>
    </message>
    <message>
        <source>Properties, as &apos;bothways set&apos; takes them</source>
        <translation>Eigenschaften, wie „bothways set“ sie nimmt</translation>
    </message>
    <message>
        <source>Put a finding aside, with a reason: the run may count</source>
        <translation>Einen Befund mit Begründung zurückweisen: die Fahrt darf zählen</translation>
    </message>
    <message>
        <source>READINGS</source>
        <translation>ABLESUNGEN</translation>
    </message>
    <message>
        <source>REASON</source>
        <translation>GRUND</translation>
    </message>
    <message>
        <source>REQUIRED</source>
        <translation>NÖTIG</translation>
    </message>
    <message>
        <source>RULE</source>
        <translation>REGEL</translation>
    </message>
    <message>
        <source>RUNS</source>
        <translation>FAHRTEN</translation>
    </message>
    <message>
        <source>Read a rig for some seconds: values, rates, and which rules read them</source>
        <translation>Eine Messausrüstung einige Sekunden lang lesen: Werte, Raten und welche Regeln sie lesen</translation>
    </message>
    <message>
        <source>Read-only file system</source>
        <translation>schreibgeschütztes Dateisystem</translation>
    </message>
    <message>
        <source>Reasons: {}.
Decide by what was seen in the run, never by its consumption: the result shows what
putting each discard back would do.</source>
        <translation>Gründe: {}.
Entscheiden Sie nach dem, was in der Fahrt zu sehen war, nie nach ihrem Verbrauch:
Das Ergebnis zeigt, was es änderte, jede verworfene Fahrt wieder zu werten.</translation>
    </message>
    <message>
        <source>Record instruments into a study while it is driven, and say what spoils a run</source>
        <translation>Instrumente während der Fahrt in eine Studie aufzeichnen und sagen, was eine Fahrt verdirbt</translation>
    </message>
    <message>
        <source>Record it, or do without this rule: {}.</source>
        <translation>Aufzeichnen oder ohne diese Regel auskommen: {}.</translation>
    </message>
    <message>
        <source>Recording begun</source>
        <translation>Aufzeichnung begonnen</translation>
    </message>
    <message>
        <source>Recording cut into runs</source>
        <translation>Aufzeichnung in Fahrten geschnitten</translation>
    </message>
    <message>
        <source>Recording dropped</source>
        <translation>Aufzeichnung entfernt</translation>
    </message>
    <message>
        <source>Recording ended</source>
        <translation>Aufzeichnung beendet</translation>
    </message>
    <message>
        <source>Recording ended {} s early</source>
        <translation>Aufzeichnung endete {} s zu früh</translation>
    </message>
    <message>
        <source>Recording given to a run</source>
        <translation>Aufzeichnung einer Fahrt zugeordnet</translation>
    </message>
    <message>
        <source>Recording imported</source>
        <translation>Aufzeichnung importiert</translation>
    </message>
    <message>
        <source>Recording taken from a run</source>
        <translation>Aufzeichnung von einer Fahrt gelöst</translation>
    </message>
    <message>
        <source>Renamed</source>
        <translation>Umbenannt</translation>
    </message>
    <message>
        <source>Reset the meter only when already cruising. Note what happens when it happens.</source>
        <translation>Die Anzeige erst bei gleichmäßiger Fahrt zurücksetzen. Notieren, was geschieht, wenn es geschieht.</translation>
    </message>
    <message>
        <source>Road speed {} % too high</source>
        <translation>{} % zu schnell</translation>
    </message>
    <message>
        <source>Road speed {} % too low</source>
        <translation>{} % zu langsam</translation>
    </message>
    <message>
        <source>Road speed, km/h; &apos;55 mph&apos; is taken too (default: that of the study, else 100)</source>
        <translation>Fahrgeschwindigkeit in km/h; auch „55 mph“ (Vorgabe: die der Studie, sonst 100)</translation>
    </message>
    <message>
        <source>Rules that lack their channel:</source>
        <translation>Regeln, denen ihr Kanal fehlt:</translation>
    </message>
    <message>
        <source>Run added</source>
        <translation>Fahrt hinzugefügt</translation>
    </message>
    <message>
        <source>Run card</source>
        <translation>Fahrtenkarte</translation>
    </message>
    <message>
        <source>Run card: {}</source>
        <translation>Fahrtenkarte: {}</translation>
    </message>
    <message>
        <source>Run changed</source>
        <translation>Fahrt geändert</translation>
    </message>
    <message>
        <source>Run interrupted</source>
        <translation>Fahrt unterbrochen</translation>
    </message>
    <message>
        <source>Run removed</source>
        <translation>Fahrt entfernt</translation>
    </message>
    <message>
        <source>Run sheet imported</source>
        <translation>Fahrtenblatt importiert</translation>
    </message>
    <message>
        <source>Run {} counts although a finding says that it is spoiled. Discard, or overrule the finding with a reason, before you go by this.</source>
        <translation>Fahrt {} wird gewertet, obwohl sie laut einem Befund unbrauchbar ist. Verwerfen Sie sie, oder weisen Sie den Befund mit Begründung zurück, bevor Sie sich auf dieses Ergebnis stützen.</translation>
    </message>
    <message>
        <source>Runs are given in more than one unit; they were converted before anything else.</source>
        <translation>Die Fahrten sind in mehr als einer Einheit angegeben; sie wurden vor allem anderen umgerechnet.</translation>
    </message>
    <message>
        <source>Runs {} count although a finding says that they are spoiled. Discard, or overrule the finding with a reason, before you go by this.</source>
        <translation>Die Fahrten {} werden gewertet, obwohl sie laut einem Befund unbrauchbar sind. Verwerfen Sie sie, oder weisen Sie den Befund mit Begründung zurück, bevor Sie sich auf dieses Ergebnis stützen.</translation>
    </message>
    <message>
        <source>SECONDS</source>
        <translation>SEKUNDEN</translation>
    </message>
    <message>
        <source>SEE ALSO</source>
        <comment>of a manual page</comment>
        <translation>SIEHE AUCH</translation>
    </message>
    <message>
        <source>SHARE</source>
        <translation>ANTEIL</translation>
    </message>
    <message>
        <source>SHEET</source>
        <translation>BLATT</translation>
    </message>
    <message>
        <source>SHOWN=TRUE twice: what the channel shows, and what the true meter shows</source>
        <translation>Zweimal GEZEIGT=WAHR: was der Kanal zeigt und was das richtige Messgerät zeigt</translation>
    </message>
    <message>
        <source>SOURCE=CHANNEL*FACTOR+OFFSET UNIT: what a source is called here; with several instruments INSTRUMENT/SOURCE=…</source>
        <translation>QUELLE=KANAL*FAKTOR+VERSATZ EINHEIT: wie eine Quelle hier heißt; bei mehreren Messgeräten MESSGERÄT/QUELLE=…</translation>
    </message>
    <message>
        <source>STUDY</source>
        <translation>STUDIE</translation>
    </message>
    <message>
        <source>SYNOPSIS</source>
        <comment>of a manual page</comment>
        <translation>ÜBERSICHT</translation>
    </message>
    <message>
        <source>Same as run {}</source>
        <translation>Wie Fahrt {}</translation>
    </message>
    <message>
        <source>Say results, warnings and errors alone: not what was done</source>
        <translation>Nur Ergebnisse, Warnungen und Fehler sagen, nicht, was getan wurde</translation>
    </message>
    <message>
        <source>Say the version and leave</source>
        <translation>Die Version nennen und enden</translation>
    </message>
    <message>
        <source>Say this and leave</source>
        <translation>Diese Hilfe zeigen und enden</translation>
    </message>
    <message>
        <source>Say what a verb does, as VERB --help does</source>
        <translation>Sagen, was ein Befehl tut, wie BEFEHL --help</translation>
    </message>
    <message>
        <source>Scatter of a pair, per cent (default 1)</source>
        <translation>Streuung eines Paars, Prozent (Vorgabe 1)</translation>
    </message>
    <message>
        <source>Screening left out: {}.</source>
        <translation>Die Sichtung ließ weg: {}.</translation>
    </message>
    <message>
        <source>Seconds to add to the times of a recorder&apos;s clock that is wrong: 600 where it is ten minutes slow, -600 where it is fast</source>
        <translation>Sekunden, die zu den Zeiten einer falsch gehenden Uhr des Loggers kommen: 600, wenn sie zehn Minuten nachgeht, -600, wenn sie vorgeht</translation>
    </message>
    <message>
        <source>Seconds to read for (default: 5)</source>
        <translation>Sekunden, die gelesen wird (Vorgabe: 5)</translation>
    </message>
    <message>
        <source>See that the recording goes on.</source>
        <translation>Darauf achten, dass die Aufzeichnung weiterläuft.</translation>
    </message>
    <message>
        <source>See: {}</source>
        <translation>Siehe: {}</translation>
    </message>
    <message>
        <source>Seed of the random deals; the same seed gives the same answer</source>
        <translation>Startwert der zufälligen Verteilungen; derselbe Startwert gibt dieselbe Antwort</translation>
    </message>
    <message>
        <source>Sensitive: leaving out a single pair changes the verdict for {} of the {} pairs.</source>
        <translation>Empfindlich: Ein einziges Paar wegzulassen, ändert das Urteil bei {} von {} Paaren.</translation>
    </message>
    <message>
        <source>Sensitive: leaving out a single pair changes the verdict.</source>
        <translation>Empfindlich: Ein einziges Paar wegzulassen, ändert das Urteil.</translation>
    </message>
    <message>
        <source>Sensitive: the verdict hangs on single pairs. It changes when pair {} is left out.</source>
        <translation>Empfindlich: Das Urteil hängt an einzelnen Paaren. Es ändert sich ohne Paar {}.</translation>
    </message>
    <message>
        <source>Set a study&apos;s properties and limits</source>
        <translation>Eigenschaften und Grenzen einer Studie setzen</translation>
    </message>
    <message>
        <source>Set it among the study&apos;s limits, or do without this rule: {}.</source>
        <translation>Bei den Grenzen der Studie setzen oder ohne diese Regel auskommen: {}.</translation>
    </message>
    <message>
        <source>Set runs aside, with a reason</source>
        <translation>Fahrten verwerfen, mit einem Grund</translation>
    </message>
    <message>
        <source>Set the accessories as they were. Turn and drive the run again.</source>
        <translation>Die Nebenverbraucher wie vorher einstellen. Wenden und die Fahrt wiederholen.</translation>
    </message>
    <message>
        <source>Setting moved by {}°</source>
        <translation>Einstellung um {}° verstellt</translation>
    </message>
    <message>
        <source>Setting {}° above the one set</source>
        <translation>Einstellung {}° über der vorgegebenen</translation>
    </message>
    <message>
        <source>Setting {}° below the one set</source>
        <translation>Einstellung {}° unter der vorgegebenen</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Settings and limits used</source>
        <translation>Benutzte Einstellungen und Grenzen</translation>
    </message>
    <message>
        <source>Shapiro–Wilk (Royston 1995), externally studentised residual with Bonferroni, Durbin–Watson (exact), a squared term in time, the spread of either configuration (Goldfeld–Quandt 1965), last baseline block against the first, out minus return over time and between the configurations, the first pair of each block, one effect against one a day, the step of the display against the noise, and moist-air density (CIPM-2007; Picard et al. 2008). A check fails at p &amp;lt; 0.01 and is noted at p &amp;lt; 0.05.</source>
        <translation>Shapiro–Wilk (Royston 1995), extern studentisiertes Residuum mit Bonferroni, Durbin–Watson (exakt), ein quadratischer Term in der Zeit, die Streuung jeder Konfiguration (Goldfeld–Quandt 1965), letzter Referenzblock gegen den ersten, hin minus zurück über der Zeit und zwischen den Konfigurationen, das erste Paar jedes Blocks, ein Effekt gegen einen je Tag, der Schritt der Anzeige gegen das Rauschen und die Dichte feuchter Luft (CIPM-2007; Picard et al. 2008). Eine Annahme ist verletzt bei p &amp;lt; 0,01 und auffällig bei p &amp;lt; 0,05.</translation>
    </message>
    <message>
        <source>Show one part of the window first: {}.</source>
        <translation>Einen Teil des Fensters zuerst zeigen: {}.</translation>
    </message>
    <message>
        <source>Single runs, unpaired ones too, with the direction as a term of its own</source>
        <translation>Einzelfahrten, auch ungepaarte, mit der Richtung als eigenem Term</translation>
    </message>
    <message>
        <source>Size of the picture, 1280x800; of a thumbnail its side, 128.</source>
        <translation>Größe des Bildes, 1280x800; bei einem Vorschaubild seine Seite, 128.</translation>
    </message>
    <message>
        <source>Slow down before the limit is passed.</source>
        <translation>Langsamer fahren, bevor die Grenze überschritten ist.</translation>
    </message>
    <message>
        <source>Slow down. Stop where it is safe; look at belt and wiring.</source>
        <translation>Langsamer fahren. Anhalten, wo es sicher ist; Riemen und Leitungen prüfen.</translation>
    </message>
    <message>
        <source>Slow down. Stop where it is safe; look for what is loose.</source>
        <translation>Langsamer fahren. Anhalten, wo es sicher ist; nach Losem suchen.</translation>
    </message>
    <message>
        <source>Slow down. Turn and drive the run again.</source>
        <translation>Langsamer fahren. Wenden und die Fahrt wiederholen.</translation>
    </message>
    <message>
        <source>Stop where it is safe; look at the belt.</source>
        <translation>Anhalten, wo es sicher ist; den Riemen prüfen.</translation>
    </message>
    <message>
        <source>Studies or run sheets</source>
        <translation>Studien oder Fahrtenblätter</translation>
    </message>
    <message>
        <source>Studies or run sheets to take the noise of a pair from</source>
        <translation>Studien oder Fahrtenblätter, denen das Rauschen eines Paars entnommen wird</translation>
    </message>
    <message>
        <source>Studies or run sheets whose noise is pooled (default: the FILEs)</source>
        <translation>Studien oder Fahrtenblätter, deren Rauschen zusammengefasst wird (Vorgabe: jede DATEI)</translation>
    </message>
    <message>
        <source>Study made</source>
        <translation>Studie angelegt</translation>
    </message>
    <message>
        <source>Study properties</source>
        <translation>Eigenschaften der Studie</translation>
    </message>
    <message>
        <source>Successive pairs look independent {}. In short series this sees little: passing is no proof.</source>
        <translation>Aufeinanderfolgende Paare wirken unabhängig {}. In kurzen Reihen sieht diese Prüfung wenig: Sie zu bestehen, ist kein Beweis.</translation>
    </message>
    <message>
        <source>Successive pairs perhaps resemble each other {}: they say less than their number, and the interval is too narrow. Go by &apos;correlated&apos;.</source>
        <translation>Aufeinanderfolgende Paare ähneln einander vielleicht {}: Sie sagen weniger, als ihre Zahl verspricht, und das Intervall ist zu schmal. Richten Sie sich nach der Gegenprobe für korrelierte Paare.</translation>
    </message>
    <message>
        <source>Successive pairs resemble each other {}: they say less than their number, and the interval is too narrow. Go by &apos;correlated&apos;.</source>
        <translation>Aufeinanderfolgende Paare ähneln einander {}: Sie sagen weniger, als ihre Zahl verspricht, und das Intervall ist zu schmal. Richten Sie sich nach der Gegenprobe für korrelierte Paare.</translation>
    </message>
    <message>
        <source>Switch it on again. Turn and drive the run again.</source>
        <translation>Wieder einschalten. Wenden und die Fahrt wiederholen.</translation>
    </message>
    <message>
        <source>Switch to {}: {} min, until {}. Note what was changed.</source>
        <translation>Wechsel zu {}: {} min, bis {}. Notieren, was geändert wurde.</translation>
    </message>
    <message>
        <source>Switch {} on again.</source>
        <translation>{} wieder einschalten.</translation>
    </message>
    <message>
        <source>Switch {} on again. Turn and drive the run again.</source>
        <translation>{} wieder einschalten. Wenden und die Fahrt wiederholen.</translation>
    </message>
    <message>
        <source>TERM</source>
        <translation>POSTEN</translation>
    </message>
    <message>
        <source>TEXT</source>
        <translation>TEXT</translation>
    </message>
    <message>
        <source>TIME</source>
        <translation>ZEIT</translation>
    </message>
    <message>
        <source>TO</source>
        <comment>a file</comment>
        <translation>ZIEL</translation>
    </message>
    <message>
        <source>Take back the newest change; the history keeps both</source>
        <translation>Die neueste Änderung rückgängig machen; der Verlauf behält beides</translation>
    </message>
    <message>
        <source>Taken from the study: a stretch of {} km (stretch.km).</source>
        <translation>Aus der Studie: eine Messstrecke von {} km (stretch.km).</translation>
    </message>
    <message>
        <source>Taken from the study: a stretch of {} km (the median of {} runs).</source>
        <translation>Aus der Studie: eine Messstrecke von {} km (Median von {} Fahrten).</translation>
    </message>
    <message>
        <source>Taken from the study: a stretch of {} km ({} run says it).</source>
        <translation>Aus der Studie: eine Messstrecke von {} km (das sagt {} Fahrt).</translation>
    </message>
    <message>
        <source>Taken from the study: {}.</source>
        <translation>Aus der Studie: {}.</translation>
    </message>
    <message>
        <source>Tasks</source>
        <comment>of a verb</comment>
        <translation>Aufgaben</translation>
    </message>
    <message>
        <source>Temperature ________   Pressure at the place ________   Wind ________</source>
        <translation>Temperatur ________   Luftdruck am Ort ________   Wind ________</translation>
    </message>
    <message>
        <source>That is at least {}.</source>
        <translation>Das ist mindestens {}.</translation>
    </message>
    <message>
        <source>That is {} in place of {} {}.</source>
        <translation>Das sind {} statt {} {}.</translation>
    </message>
    <message>
        <source>The Bothways handbook</source>
        <translation>Das Bothways-Handbuch</translation>
    </message>
    <message>
        <source>The air was outside the range of the density formula (15 to 27 °C, 600 to 1,100 hPa): take its density as approximate.</source>
        <translation>Die Luft lag außerhalb des Bereichs der Dichteformel (15 bis 27 °C, 600 bis 1.100 hPa): Nehmen Sie ihre Dichte als Näherung.</translation>
    </message>
    <message>
        <source>The average of {} was {} {}.</source>
        <translation>Der Mittelwert von {} betrug {} {}.</translation>
    </message>
    <message>
        <source>The claimed {} is borne out.</source>
        <translation>Behauptet sind {}: Das ist bestätigt.</translation>
    </message>
    <message>
        <source>The claimed {} is ruled out: it is at least {}.</source>
        <translation>Behauptet sind {}: Das ist ausgeschlossen, es sind mindestens {}.</translation>
    </message>
    <message>
        <source>The claimed {} is ruled out: it is at most {}.</source>
        <translation>Behauptet sind {}: Das ist ausgeschlossen, es sind höchstens {}.</translation>
    </message>
    <message>
        <source>The columns of a run sheet: name, unit, range, and other names</source>
        <translation>Die Spalten eines Fahrtenblatts: Name, Einheit, Bereich und andere Namen</translation>
    </message>
    <message>
        <source>The columns that are asked for, by any name (default: all)</source>
        <translation>Die Spalten, nach denen gefragt wird, unter irgendeinem Namen (sonst: alle)</translation>
    </message>
    <message>
        <source>The control vehicle is not used: some counted runs lack its consumption.</source>
        <translation>Das Kontrollfahrzeug wird nicht benutzt: Bei einigen gewerteten Fahrten fehlt sein Verbrauch.</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Der Tag</translation>
    </message>
    <message>
        <source>The days agree on the effect {}.</source>
        <translation>Die Tage sind sich über den Effekt einig {}.</translation>
    </message>
    <message>
        <source>The days do not agree on the effect {}: one number for all of them hides that. Read each day for itself, and find what was different.</source>
        <translation>Die Tage sind sich über den Effekt nicht einig {}: Eine Zahl für alle verbirgt das. Lesen Sie jeden Tag für sich und finden Sie heraus, was anders war.</translation>
    </message>
    <message>
        <source>The days perhaps do not agree on the effect {}: one number for all of them then hides something. Read each day for itself, and find what was different.</source>
        <translation>Die Tage sind sich über den Effekt vielleicht nicht einig {}: Eine Zahl für alle verbirgt dann etwas. Lesen Sie jeden Tag für sich und finden Sie heraus, was anders war.</translation>
    </message>
    <message>
        <source>The device perhaps works differently out and back (apart by {} %, {}): the answer is the mean of the two ways. A wind that stays or a slope may favour it one way; look at the two directions apart.</source>
        <translation>Das Gerät wirkt hin und zurück vielleicht verschieden (Unterschied {} %, {}): Die Antwort ist das Mittel der beiden Richtungen. Ein Wind, der bleibt, oder ein Gefälle kann es in einer Richtung begünstigen; sehen Sie sich die beiden Richtungen getrennt an.</translation>
    </message>
    <message>
        <source>The device works differently out and back (apart by {} %, {}): the answer is the mean of the two ways. A wind that stays or a slope may favour it one way; look at the two directions apart.</source>
        <translation>Das Gerät wirkt hin und zurück verschieden (Unterschied {} %, {}): Die Antwort ist das Mittel der beiden Richtungen. Ein Wind, der bleibt, oder ein Gefälle kann es in einer Richtung begünstigen; sehen Sie sich die beiden Richtungen getrennt an.</translation>
    </message>
    <message>
        <source>The drift bends {}. A straight line does not remove that, so part of it sits in the effect. Was everything warm before run 1? Drive more and shorter blocks.</source>
        <translation>Die Drift ist gekrümmt {}. Eine Gerade rechnet das nicht heraus, ein Teil davon steckt also im Effekt. War vor Fahrt 1 alles warm? Fahren Sie mehr und kürzere Blöcke.</translation>
    </message>
    <message>
        <source>The drift perhaps bends {}. A straight line does not remove that, so part of it sits in the effect. Was everything warm before run 1? Drive more and shorter blocks.</source>
        <translation>Die Drift ist vielleicht gekrümmt {}. Eine Gerade rechnet das nicht heraus, ein Teil davon steckt also im Effekt. War vor Fahrt 1 alles warm? Fahren Sie mehr und kürzere Blöcke.</translation>
    </message>
    <message>
        <source>The driver drives, the companion writes. Obey traffic law; let faster traffic pass. Nobody stands in the plane of a rotor; stop at once on strange vibration or noise. What is fitted to the vehicle may touch its insurance and inspection: ask first. This is not a certification procedure.</source>
        <translation>Wer fährt, fährt; wer mitfährt, schreibt. Verkehrsregeln einhalten; schnelleren Verkehr vorbeilassen. Niemand steht in der Ebene eines Rotors; bei ungewohnter Vibration oder ungewohntem Geräusch sofort anhalten. Was am Fahrzeug angebaut wird, kann Versicherung und Hauptuntersuchung berühren: vorher fragen. Dies ist kein Zertifizierungsverfahren.</translation>
    </message>
    <message>
        <source>The driver drives; the companion types.</source>
        <translation>Wer fährt, fährt; wer mitfährt, tippt.</translation>
    </message>
    <message>
        <source>The effect in % with each pair left out in turn. Grey band: the headline&apos;s interval; orange diamonds: another verdict.</source>
        <translation>Der Effekt in %, wenn je ein Paar weggelassen wird. Graues Band: das Intervall des Hauptergebnisses; orange Rauten: ein anderes Urteil.</translation>
    </message>
    <message>
        <source>The effect to be seen, per cent: how many watts is that? (default: the study&apos;s)</source>
        <translation>Der Effekt, der zu sehen sein soll, in Prozent: wie viel Watt sind das? (Vorgabe: der der Studie)</translation>
    </message>
    <message>
        <source>The effect to expect from first principles, beside the measured one</source>
        <translation>Der nach physikalischen Grundsätzen zu erwartende Effekt, neben dem gemessenen</translation>
    </message>
    <message>
        <source>The effect with each of {} pairs left out in turn</source>
        <translation>Der Effekt, wenn je eines der {} Paare weggelassen wird</translation>
    </message>
    <message>
        <source>The effect with its {} % interval. Thick bar: the {} % interval of the equivalence test. Grey band: the margin. Line: no effect.</source>
        <translation>Der Effekt mit seinem {}‑%-Intervall. Dicker Balken: das {}‑%-Intervall des Äquivalenztests. Graues Band: die Relevanzschwelle. Linie: kein Effekt.</translation>
    </message>
    <message>
        <source>The file to make; there must be none yet</source>
        <translation>Die Datei, die angelegt wird; es darf sie noch nicht geben</translation>
    </message>
    <message>
        <source>The first pair of a block is like the others ({}, {}).</source>
        <translation>Das erste Paar eines Blocks ist wie die anderen ({}, {}).</translation>
    </message>
    <message>
        <source>The first pair of each block differs from the others ({}, {}): during a stop engine, tyres and axle cool. Drive one pair that does not count after each stop.</source>
        <translation>Das erste Paar jedes Blocks weicht von den anderen ab ({}, {}): Während eines Halts kühlen Motor, Reifen und Achse ab. Fahren Sie nach jedem Halt ein Paar, das nicht zählt.</translation>
    </message>
    <message>
        <source>The first pair of each block perhaps differs from the others ({}, {}): during a stop engine, tyres and axle cool. Drive one pair that does not count after each stop.</source>
        <translation>Das erste Paar jedes Blocks weicht vielleicht von den anderen ab ({}, {}): Während eines Halts kühlen Motor, Reifen und Achse ab. Fahren Sie nach jedem Halt ein Paar, das nicht zählt.</translation>
    </message>
    <message>
        <source>The handbook, for a browser: {}</source>
        <translation>Das Handbuch, für den Browser: {}</translation>
    </message>
    <message>
        <source>The history keeps the discard and its lifting.</source>
        <translation>Der Verlauf behält das Verwerfen und seine Aufhebung.</translation>
    </message>
    <message>
        <source>The instruments and channels of a rig</source>
        <translation>Die Messgeräte und Kanäle einer Messausrüstung</translation>
    </message>
    <message>
        <source>The instruments of a car: try them, name their channels, calibrate them</source>
        <translation>Die Messgeräte eines Autos: ausprobieren, ihre Kanäle benennen, kalibrieren</translation>
    </message>
    <message>
        <source>The interval that allows for looking says: {}.</source>
        <translation>Das Intervall, das die Blicke berücksichtigt, sagt: {}.</translation>
    </message>
    <message>
        <source>The interval that keeps its promise however often the result was looked at on the way; so it is wider</source>
        <translation>Das Intervall, das sein Versprechen hält, so oft das Ergebnis unterwegs auch angesehen wurde; dafür ist es breiter</translation>
    </message>
    <message>
        <source>The language: the first that is set. JSON and CSV do not change.</source>
        <translation>Die Sprache: die erste, die gesetzt ist. JSON und CSV ändern sich nicht.</translation>
    </message>
    <message>
        <source>The last digit shown is worth {} % of a reading{}: far too coarse for a noise this small, so the interval is too narrow. Note litres and distance, or drive a longer stretch.</source>
        <translation>Die letzte gezeigte Stelle ist {} % einer Ablesung wert{}: viel zu grob für ein so kleines Rauschen, das Intervall ist deshalb zu schmal. Notieren Sie Liter und Strecke, oder fahren Sie eine längere Messstrecke.</translation>
    </message>
    <message>
        <source>The last digit shown is worth {} % of a reading{}: fine enough for this noise.</source>
        <translation>Die letzte angezeigte Stelle macht {} % einer Ablesung aus{}: fein genug für dieses Rauschen.</translation>
    </message>
    <message>
        <source>The last digit shown is worth {} % of a reading{}: too coarse for a noise this small, which may be luck of the rounding. Note litres and distance, or drive a longer stretch.</source>
        <translation>Die letzte angezeigte Stelle macht {} % einer Ablesung aus{}: zu grob für ein so kleines Rauschen, das auch glücklich gerundet sein kann. Notieren Sie Liter und Strecke, oder fahren Sie eine längere Messstrecke.</translation>
    </message>
    <message>
        <source>The mean, if each has an effect of its own: {}.</source>
        <translation>Das Mittel, falls jede ihren eigenen Effekt hat: {}.</translation>
    </message>
    <message>
        <source>The method in a page</source>
        <translation>Die Methode auf einer Seite</translation>
    </message>
    <message>
        <source>The name that it gets</source>
        <translation>Der Name, den sie bekommt</translation>
    </message>
    <message>
        <source>The name that it has</source>
        <translation>Der Name, den sie hat</translation>
    </message>
    <message>
        <source>The noise was measured on few pairs and may well be {}; then the interval is plus or minus {} and {} or more is found.</source>
        <translation>Das Rauschen wurde an wenigen Paaren gemessen und kann gut {} betragen; dann ist das Intervall plus oder minus {}, und {} oder mehr wird gefunden.</translation>
    </message>
    <message>
        <source>The pair tied by hand as &apos;{}&apos; is set aside: it takes one out and one return run of one block, both counted.</source>
        <translation>Das von Hand als „{}“ gebildete Paar ruht: Nötig sind eine Hinfahrt und eine Rückfahrt eines Blocks, beide gewertet.</translation>
    </message>
    <message>
        <source>The pairs</source>
        <translation>Die Paare</translation>
    </message>
    <message>
        <source>The pairs as CSV</source>
        <translation>Die Paare als CSV</translation>
    </message>
    <message>
        <source>The pairs, a line each</source>
        <translation>Die Paare, je eine Zeile</translation>
    </message>
    <message>
        <source>The plan was tied or changed after a look at the verdict: it does not protect from stopping when the answer suits.</source>
        <translation>Der Plan wurde nach einem Blick auf das Urteil gebunden oder geändert: Er schützt nicht davor, dann aufzuhören, wenn die Antwort gefällt.</translation>
    </message>
    <message>
        <source>The plan was tied or changed when there were runs already: do not report it as one that was made before.</source>
        <translation>Der Plan wurde gebunden oder geändert, als es schon Fahrten gab: Geben Sie ihn nicht als vorher gemacht aus.</translation>
    </message>
    <message>
        <source>The residuals are no ordinary scatter {}: the interval is rough. Look for a pair that stands apart, and lean on the dealt labels, which need no bell curve.</source>
        <translation>Die Residuen streuen nicht gewöhnlich {}: Das Intervall ist nur grob. Suchen Sie nach einem abseits liegenden Paar und stützen Sie sich auf das Vertauschen der Zuordnung, das keine Glockenkurve braucht.</translation>
    </message>
    <message>
        <source>The residuals are perhaps no ordinary scatter {}: the interval is rough. Look for a pair that stands apart, and lean on the dealt labels, which need no bell curve.</source>
        <translation>Die Residuen streuen vielleicht nicht gewöhnlich {}: Das Intervall ist nur grob. Suchen Sie nach einem abseits liegenden Paar und stützen Sie sich auf das Vertauschen der Zuordnung, das keine Glockenkurve braucht.</translation>
    </message>
    <message>
        <source>The residuals look like ordinary scatter {}.</source>
        <translation>Die Residuen sehen nach gewöhnlicher Streuung aus {}.</translation>
    </message>
    <message>
        <source>The rigs that you keep</source>
        <translation>Die Messausrüstungen, die Sie aufbewahren</translation>
    </message>
    <message>
        <source>The rule whose finding it is, as &apos;bothways screen&apos; names it</source>
        <translation>Die Regel, von der der Befund ist, wie „bothways screen“ sie nennt</translation>
    </message>
    <message>
        <source>The run that the recording belongs to</source>
        <translation>Die Fahrt, zu der die Aufzeichnung gehört</translation>
    </message>
    <message>
        <source>The run, by the columns of a run sheet</source>
        <translation>Die Fahrt, nach den Spalten eines Fahrtenblatts</translation>
    </message>
    <message>
        <source>The runs</source>
        <translation>Die Fahrten</translation>
    </message>
    <message>
        <source>The runs are checked as typed ones are, and change all or none; one &apos;undo&apos; takes it back. &apos;COLUMN=&apos; empties a column.</source>
        <translation>Die Fahrten werden wie eingetippte geprüft und ändern sich alle oder keine; ein „undo“ nimmt es zurück. „SPALTE=“ leert eine Spalte.</translation>
    </message>
    <message>
        <source>The same, as an option</source>
        <translation>Dasselbe als Option</translation>
    </message>
    <message>
        <source>The serial ports of this computer</source>
        <translation>Die seriellen Schnittstellen dieses Rechners</translation>
    </message>
    <message>
        <source>The sheet has times of day only; {} was taken as its date.</source>
        <translation>Das Blatt enthält nur Uhrzeiten; als Datum wurde {} angenommen.</translation>
    </message>
    <message>
        <source>The sheet was read with {}.</source>
        <translation>Das Blatt wurde gelesen mit: {}.</translation>
    </message>
    <message>
        <source>The smallest effect that you would care about, per cent (default 1)</source>
        <translation>Relevanzschwelle: der kleinste Effekt, auf den es Ihnen ankommt, in Prozent (Vorgabe 1)</translation>
    </message>
    <message>
        <source>The studies</source>
        <translation>Die Studien</translation>
    </message>
    <message>
        <source>The studies agree with that {}.</source>
        <translation>Die Studien stimmen damit überein {}.</translation>
    </message>
    <message>
        <source>The studies do not agree on one effect {}: read each for itself.</source>
        <translation>Die Studien sind sich über einen Effekt nicht einig {}: Lesen Sie jede für sich.</translation>
    </message>
    <message>
        <source>The studies perhaps do not agree on one effect {}.</source>
        <translation>Die Studien sind sich über einen Effekt vielleicht nicht einig {}.</translation>
    </message>
    <message>
        <source>The study</source>
        <translation>Die Studie</translation>
    </message>
    <message>
        <source>The study&apos;s list from now on: lines parted by &apos;;&apos;, one that asks for a number with &apos;= UNIT +- TOLERANCE&apos;</source>
        <translation>Von jetzt an die Liste der Studie: Zeilen durch „;“ getrennt, eine, die nach einer Zahl fragt, mit „= EINHEIT +- TOLERANZ“</translation>
    </message>
    <message>
        <source>The term in &lt;i&gt;t&lt;/i&gt; takes out a straight drift of the day (warming, wind, traffic). With one switch only (an open design) it cannot be told from the effect and is left out: df = n − 2, and the verdict says so. With several days each has its own intercept and, where any day has two switches, its own slope, and there is one δ.</source>
        <translation>Der Term in &lt;i&gt;t&lt;/i&gt; rechnet eine geradlinige Drift des Tages heraus (Erwärmung, Wind, Verkehr). Bei nur einem Wechsel (offener Versuchsplan) lässt sie sich nicht vom Effekt trennen und entfällt: FG = n − 2, und das Urteil sagt es. Bei mehreren Tagen hat jeder sein eigenes Niveau und, wenn irgendein Tag zwei Wechsel hat, seine eigene Steigung, und es gibt ein δ.</translation>
    </message>
    <message>
        <source>The verb to be told of (default: all of them)</source>
        <translation>Der Befehl, um den es geht (Vorgabe: alle)</translation>
    </message>
    <message>
        <source>The verdict</source>
        <translation>Das Urteil</translation>
    </message>
    <message>
        <source>There are no runs.</source>
        <translation>Es gibt keine Fahrten.</translation>
    </message>
    <message>
        <source>There is an effect, but it is smaller than the {} % that you care about.</source>
        <translation>Es gibt einen Effekt, aber er ist kleiner als die {} %, auf die es Ihnen ankommt.</translation>
    </message>
    <message>
        <source>There is no rig yet. Make one with: bothways rig new NAME KIND:ADDRESS</source>
        <translation>Es gibt noch keine Messausrüstung. Anlegen mit: bothways rig new NAME ART:ADRESSE</translation>
    </message>
    <message>
        <source>There is no serial port. A board or a converter shows as one when it is plugged in.</source>
        <translation>Es gibt keine serielle Schnittstelle. Eine Platine oder ein Umsetzer zeigt sich als eine, sobald er eingesteckt ist.</translation>
    </message>
    <message>
        <source>These runs cannot tell {} from {}: the effect lies between {} ({} interval).</source>
        <translation>Anhand dieser Fahrten lässt sich {} nicht von {} unterscheiden: Der Effekt liegt zwischen {} ({}-Intervall).</translation>
    </message>
    <message>
        <source>These runs neither bear out nor rule out the claimed {}.</source>
        <translation>Behauptet sind {}: Diese Fahrten können das weder bestätigen noch ausschließen.</translation>
    </message>
    <message>
        <source>They could have shown {} % or more; more pairs alone would hardly show {} % at this noise.</source>
        <translation>Sie hätten {} % oder mehr zeigen können; mehr Paare allein würden {} % bei diesem Rauschen kaum sichtbar machen.</translation>
    </message>
    <message>
        <source>They could have shown {} % or more; such a day can show {} %, so driving it once more is worth while.</source>
        <translation>Sie hätten {} % oder mehr zeigen können; ein solcher Tag kann {} % zeigen, es lohnt sich also, ihn noch einmal zu fahren.</translation>
    </message>
    <message>
        <source>They could have shown {} % or more; {} more pair a block would show {} %.</source>
        <translation>Sie hätten {} % oder mehr zeigen können; mit {} weiteren Paar je Block wären {} % nachweisbar.</translation>
    </message>
    <message>
        <source>They could have shown {} % or more; {} more pairs a block would show {} %.</source>
        <translation>Sie hätten {} % oder mehr zeigen können; mit {} weiteren Paaren je Block wären {} % nachweisbar.</translation>
    </message>
    <message>
        <source>Tick the walk-round that is made before a block, or list it</source>
        <translation>Den Rundgang abhaken, der vor einem Block gemacht wird, oder ihn auflisten</translation>
    </message>
    <message>
        <source>Tie an out and a return run of one block, whatever their gap</source>
        <translation>Eine Hin- und eine Rückfahrt eines Blocks verbinden, gleich wie groß die Lücke ist</translation>
    </message>
    <message>
        <source>Time of the first run on the card (default 06:00)</source>
        <translation>Zeit der ersten Fahrt auf der Karte (Vorgabe 06:00)</translation>
    </message>
    <message>
        <source>To be seen by the study it would have to deliver {} W.</source>
        <translation>Damit die Studie es sähe, müsste es {} W abgeben.</translation>
    </message>
    <message>
        <source>To look at again</source>
        <translation>Noch einmal anzusehen</translation>
    </message>
    <message>
        <source>To tie a plan to a study before its first run:</source>
        <translation>Einen Plan vor der ersten Fahrt an eine Studie binden:</translation>
    </message>
    <message>
        <source>Together they say: {} (margin {} %).</source>
        <translation>Zusammen sagen sie: {} (Relevanzschwelle {} %).</translation>
    </message>
    <message>
        <source>Turn and drive the run again, and adjust nothing in it.</source>
        <translation>Wenden und die Fahrt wiederholen, ohne etwas zu verstellen.</translation>
    </message>
    <message>
        <source>Turn and drive the run again.</source>
        <translation>Wenden und die Fahrt wiederholen.</translation>
    </message>
    <message>
        <source>Turn and drive the run again; begin to count at the target speed.</source>
        <translation>Wenden und die Fahrt wiederholen; erst bei Zielgeschwindigkeit messen.</translation>
    </message>
    <message>
        <source>Tyre pressures: ________   Fuel: ________   Load: ________</source>
        <translation>Reifendrücke: ________   Kraftstoff: ________   Beladung: ________</translation>
    </message>
    <message>
        <source>UDP port {} cannot be listened on: {}</source>
        <translation>Auf UDP-Port {} kann nicht gehört werden: {}</translation>
    </message>
    <message>
        <source>UDP port {} is in use by another program</source>
        <translation>UDP-Port {} ist von einem anderen Programm belegt</translation>
    </message>
    <message>
        <source>UNIT</source>
        <translation>EINHEIT</translation>
    </message>
    <message>
        <source>UTF-16 letters</source>
        <translation>Buchstaben in UTF-16</translation>
    </message>
    <message>
        <source>Undone</source>
        <translation>Rückgängig gemacht</translation>
    </message>
    <message>
        <source>Unit of consumption for people: l_per_100km, mpg_us, mpg_imp, km_per_l (default: that of the runs). JSON and CSV do not change</source>
        <translation>Verbrauchseinheit für Menschen: l_per_100km, mpg_us, mpg_imp, km_per_l (Vorgabe: die der Fahrten). JSON und CSV ändern sich nicht</translation>
    </message>
    <message>
        <source>Untie a run that was tied by hand</source>
        <translation>Eine von Hand verbundene Fahrt wieder lösen</translation>
    </message>
    <message>
        <source>Usage</source>
        <translation>Aufruf</translation>
    </message>
    <message>
        <source>V</source>
        <comment>unit</comment>
        <translation>V</translation>
    </message>
    <message>
        <source>VERB</source>
        <translation>BEFEHL</translation>
    </message>
    <message>
        <source>VERBS</source>
        <comment>of a manual page</comment>
        <translation>BEFEHLE</translation>
    </message>
    <message>
        <source>Value of a pair, from consumptions &lt;i&gt;c&lt;/i&gt; and distances &lt;i&gt;d&lt;/i&gt; (equal weights unless both distances are known):</source>
        <translation>Wert eines Paars, aus Verbräuchen &lt;i&gt;c&lt;/i&gt; und Strecken &lt;i&gt;d&lt;/i&gt; (gleiche Gewichte, wenn nicht beide Strecken bekannt sind):</translation>
    </message>
    <message>
        <source>Verbs</source>
        <translation>Befehle</translation>
    </message>
    <message>
        <source>Verdict looked at</source>
        <translation>Urteil angesehen</translation>
    </message>
    <message>
        <source>Verdicts: less, more, no difference as large as the margin, cannot tell, no verdict.
None of them is an error: the exit code is 0.</source>
        <translation>Urteile: weniger, mehr, kein relevanter Unterschied, nicht entscheidbar, kein Urteil.
Keines davon ist ein Fehler: Der Rückgabewert ist 0.</translation>
    </message>
    <message>
        <source>Vibration: {} m/s²</source>
        <translation>Vibrationen: {} m/s²</translation>
    </message>
    <message>
        <source>W</source>
        <comment>unit</comment>
        <translation>W</translation>
    </message>
    <message>
        <source>WHAT</source>
        <translation>WAS</translation>
    </message>
    <message>
        <source>WORDS</source>
        <translation>WORTE</translation>
    </message>
    <message>
        <source>Walk-round</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Walk-round before each block</source>
        <translation>Rundgang vor jedem Block</translation>
    </message>
    <message>
        <source>Ways to the number</source>
        <translation>Wege zur Zahl</translation>
    </message>
    <message>
        <source>What a column of the recording is, with factor and offset to our unit; kept for the next recording with this header; once for each column</source>
        <translation>Was eine Spalte der Aufzeichnung ist, mit Faktor und Versatz zu unserer Einheit; gemerkt für die nächste Aufzeichnung mit dieser Kopfzeile; einmal für jede Spalte</translation>
    </message>
    <message>
        <source>What a column of the sheet is, where its name does not say it; &apos;bothways columns&apos; lists what there is; once for each column</source>
        <translation>Was eine Spalte des Blatts ist, wenn ihr Name es nicht sagt; „bothways columns“ führt auf, was es gibt; einmal für jede Spalte</translation>
    </message>
    <message>
        <source>What a day of driving could show, before it is driven</source>
        <translation>Was ein Fahrtag zeigen könnte, bevor er gefahren wird</translation>
    </message>
    <message>
        <source>What begins and ends runs while it records: marks, position or speed (default: whoever types)</source>
        <translation>Was Fahrten beginnt und beendet, während aufgezeichnet wird: marks, position oder speed (sonst: wer tippt)</translation>
    </message>
    <message>
        <source>What cannot be checked is listed with the reason; it is not passed. &apos;bothways set --help&apos; lists the limits.</source>
        <translation>Was sich nicht prüfen lässt, wird mit dem Grund aufgeführt; es gilt nicht als bestanden. „bothways set --help“ führt die Grenzen auf.</translation>
    </message>
    <message>
        <source>What is in order: all, line numbers, ranges; 3=230 gives line 3 its number. Without them: the list</source>
        <translation>Was in Ordnung ist: all, Zeilennummern, Bereiche; 3=230 gibt Zeile 3 ihre Zahl. Ohne sie: die Liste</translation>
    </message>
    <message>
        <source>What screening found</source>
        <translation>Was die Sichtung fand</translation>
    </message>
    <message>
        <source>What someone says that the device saves, per cent; negative for less</source>
        <translation>Was jemand als Ersparnis durch das Gerät behauptet, Prozent; negativ für weniger</translation>
    </message>
    <message>
        <source>What stands first in a date like 5/9/2026</source>
        <translation>Was in einem Datum wie 5/9/2026 vorn steht: der Tag oder der Monat</translation>
    </message>
    <message>
        <source>What these runs could have shown is not known without a verdict.</source>
        <translation>Was diese Fahrten hätten zeigen können, ist ohne Urteil nicht bekannt.</translation>
    </message>
    <message>
        <source>What this is not</source>
        <translation>Was dies nicht ist</translation>
    </message>
    <message>
        <source>What to set</source>
        <translation>Was gesetzt wird</translation>
    </message>
    <message>
        <source>What was changed, and when</source>
        <translation>Was wann geändert wurde</translation>
    </message>
    <message>
        <source>What was seen; &apos;other&apos; needs it</source>
        <translation>Was zu sehen war; bei „other“ nötig</translation>
    </message>
    <message>
        <source>What {} W at {} km/h should change, from first principles (not from runs):</source>
        <translation>Was {} W bei {} km/h ändern sollten, aus den physikalischen Grundlagen (nicht aus Fahrten):</translation>
    </message>
    <message>
        <source>When time 0 of a recording without a clock was: date and time, or a time of day of the study&apos;s date</source>
        <translation>Wann die Zeit 0 einer Aufzeichnung ohne Uhr war: Datum und Uhrzeit oder eine Uhrzeit am Datum der Studie</translation>
    </message>
    <message>
        <source>Where a stretch starts and ends, for --cut position, and how far the gates reach to each side (50 m)</source>
        <translation>Wo eine Messstrecke beginnt und endet, für --cut position, und wie weit die Tore nach jeder Seite reichen (50 m)</translation>
    </message>
    <message>
        <source>Where recordings of a run sheet are looked for that are not where the sheet has them</source>
        <translation>Wo Aufzeichnungen eines Fahrtenblatts gesucht werden, die nicht dort liegen, wo das Blatt sie hat</translation>
    </message>
    <message>
        <source>Where to write (default: standard output)</source>
        <translation>Wohin geschrieben wird (Vorgabe: Standardausgabe)</translation>
    </message>
    <message>
        <source>Which configuration is the baseline</source>
        <translation>Welche Konfiguration die Referenz ist</translation>
    </message>
    <message>
        <source>Which runs count</source>
        <translation>Welche Fahrten zählen</translation>
    </message>
    <message>
        <source>Which sequence fits, and what is each weak against?</source>
        <translation>Welche Folge passt, und wogegen ist jede schwach?</translation>
    </message>
    <message>
        <source>Which sheet of a workbook</source>
        <translation>Welches Blatt einer Arbeitsmappe</translation>
    </message>
    <message>
        <source>While it goes on, lines that are typed (or come on standard input) are orders:</source>
        <translation>Währenddessen sind Zeilen, die getippt werden (oder auf der Standardeingabe kommen), Anweisungen:</translation>
    </message>
    <message>
        <source>Why the finding does not matter</source>
        <translation>Warum der Befund nicht zählt</translation>
    </message>
    <message>
        <source>Widest gap inside a pair, minutes (default 30)</source>
        <translation>Größte Lücke in einem Paar, Minuten (Vorgabe 30)</translation>
    </message>
    <message>
        <source>Windows and vents set, and left alone</source>
        <translation>Fenster und Lüftung eingestellt und so gelassen</translation>
    </message>
    <message>
        <source>Windows-1252 (Latin-1) letters</source>
        <translation>Buchstaben in Windows-1252 (Latin-1)</translation>
    </message>
    <message>
        <source>With --card: put it in the place of a file that is there. Without it only a run card that Bothways wrote is replaced</source>
        <translation>Mit --card: an die Stelle einer vorhandenen Datei setzen. Ohne das wird nur eine Fahrtenkarte ersetzt, die Bothways geschrieben hat</translation>
    </message>
    <message>
        <source>With --output: put it in the place of a file that is there. Without it only a page that Bothways wrote is replaced</source>
        <translation>Mit --output: an die Stelle einer vorhandenen Datei setzen. Ohne das wird nur eine Seite ersetzt, die Bothways geschrieben hat</translation>
    </message>
    <message>
        <source>With every discarded run put back: no verdict.</source>
        <translation>Mit allen verworfenen Fahrten: kein Urteil.</translation>
    </message>
    <message>
        <source>With every discarded run put back: {} ({} interval: {}), verdict: {}.</source>
        <translation>Mit allen verworfenen Fahrten: {} ({}-Intervall: {}), Urteil: {}.</translation>
    </message>
    <message>
        <source>With the noise of this vehicle on earlier days</source>
        <translation>Mit dem Rauschen dieses Fahrzeugs an früheren Tagen</translation>
    </message>
    <message>
        <source>With the noise of this vehicle on earlier days; none was named.</source>
        <translation>Mit dem Rauschen dieses Fahrzeugs an früheren Tagen; es wurde keines genannt.</translation>
    </message>
    <message>
        <source>With {} pairs none of these checks has much power: passing them proves little.</source>
        <translation>Bei {} Paaren ist keine dieser Prüfungen sehr trennscharf: Sie zu bestehen, beweist wenig.</translation>
    </message>
    <message>
        <source>With {} pairs these checks see gross faults only.</source>
        <translation>Bei {} Paaren sehen diese Prüfungen nur grobe Mängel.</translation>
    </message>
    <message>
        <source>Without NAME=VALUE the properties that differ from their defaults are listed; &apos;NAME=&apos; goes back to the default.</source>
        <translation>Ohne NAME=WERT werden die Eigenschaften aufgelistet, die von ihrer Vorgabe abweichen; „NAME=“ geht auf die Vorgabe zurück.</translation>
    </message>
    <message>
        <source>Without any of {} of them there would be no verdict.</source>
        <translation>Ohne je eines von {} davon gäbe es kein Urteil.</translation>
    </message>
    <message>
        <source>Without any one of the {} pairs the effect stays between {}; the verdict does not stay the same.</source>
        <translation>Lässt man je eines der {} Paare weg, bleibt der Effekt zwischen {}; das Urteil bleibt nicht bestehen.</translation>
    </message>
    <message>
        <source>Without any one of the {} pairs the effect stays between {}; the verdict stays the same.</source>
        <translation>Lässt man je eines der {} Paare weg, bleibt der Effekt zwischen {}; auch das Urteil bleibt bestehen.</translation>
    </message>
    <message>
        <source>Without configuration it is that of the last run; without direction, the other one.</source>
        <translation>Ohne configuration ist es die der letzten Fahrt; ohne direction die andere.</translation>
    </message>
    <message>
        <source>Without the assumption of a straight drift: it may bend as well</source>
        <translation>Ohne die Annahme einer geradlinigen Drift: Sie darf auch gekrümmt sein</translation>
    </message>
    <message>
        <source>Without {} of them there would be no verdict.</source>
        <translation>Ohne {} davon gäbe es kein Urteil.</translation>
    </message>
    <message>
        <source>Write the run card, a page to print for the roadside</source>
        <translation>Die Fahrtenkarte schreiben, eine Seite zum Ausdrucken für unterwegs</translation>
    </message>
    <message>
        <source>WxH</source>
        <comment>width and height</comment>
        <translation>BxH</translation>
    </message>
    <message>
        <source>XML or HTML</source>
        <translation>XML oder HTML</translation>
    </message>
    <message>
        <source>YYYY-MM-DD</source>
        <translation>JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>a calibration needs four numbers</source>
        <translation>eine Kalibrierung braucht vier Zahlen</translation>
    </message>
    <message>
        <source>a cell holds</source>
        <translation>in einer Zelle steht</translation>
    </message>
    <message>
        <source>a change in per cent, like -5 for 5 % less: not 0, and above -100</source>
        <translation>eine Änderung in Prozent, wie -5 für 5 % weniger: nicht 0 und über -100</translation>
    </message>
    <message>
        <source>a channel</source>
        <translation>ein Kanal</translation>
    </message>
    <message>
        <source>a chunk of a recording is damaged: {}</source>
        <translation>ein Stück einer Aufzeichnung ist beschädigt: {}</translation>
    </message>
    <message>
        <source>a chunk of it has not as many rows as its times</source>
        <translation>ein Stück davon hat nicht so viele Zeilen wie seine Zeiten</translation>
    </message>
    <message>
        <source>a chunk of it is not what Bothways wrote</source>
        <translation>ein Stück davon ist nicht das, was Bothways geschrieben hat</translation>
    </message>
    <message>
        <source>a column of dates and none of the time; expected &apos;time&apos; beside &apos;date&apos;</source>
        <translation>eine Spalte mit Datum und keine mit Zeit; erwartet wird „time“ neben „date“</translation>
    </message>
    <message>
        <source>a confidence of {}; more than 0.5 and at most {} is needed</source>
        <translation>ein Vertrauensniveau von {}; nötig ist mehr als 0,5 und höchstens {}</translation>
    </message>
    <message>
        <source>a consumption of {} L/100 km (--consumption)</source>
        <translation>ein Verbrauch von {} l/100 km (--consumption)</translation>
    </message>
    <message>
        <source>a consumption of {} kWh/100 km (--consumption)</source>
        <translation>ein Verbrauch von {} kWh/100 km (--consumption)</translation>
    </message>
    <message>
        <source>a copy needs another name</source>
        <translation>eine Kopie braucht einen anderen Namen</translation>
    </message>
    <message>
        <source>a database</source>
        <translation>eine Datenbank</translation>
    </message>
    <message>
        <source>a date and time like 2026-05-09T05:20, or a time of day where the study has a date</source>
        <translation>Datum und Uhrzeit wie 2026-05-09T05:20 oder, wo die Studie ein Datum hat, eine Uhrzeit</translation>
    </message>
    <message>
        <source>a date and time like 2026-05-09T05:40:00</source>
        <translation>Datum und Uhrzeit wie 2026-05-09T05:40:00</translation>
    </message>
    <message>
        <source>a date and time, or a time of day</source>
        <translation>ein Datum mit Uhrzeit oder eine Uhrzeit</translation>
    </message>
    <message>
        <source>a date like 2026-05-09</source>
        <translation>ein Datum wie 2026-05-09</translation>
    </message>
    <message>
        <source>a day, where the start is a time of day</source>
        <translation>ein Tag, wenn der Start eine Uhrzeit ist</translation>
    </message>
    <message>
        <source>a file cannot be opened, read or written, or the program cannot go on</source>
        <translation>eine Datei lässt sich nicht öffnen, lesen oder schreiben, oder das Programm kann nicht weiter</translation>
    </message>
    <message>
        <source>a gust or a passing vehicle{}: {} times the usual scatter{}</source>
        <translation>eine Böe oder ein vorbeifahrendes Fahrzeug{}: das {}-Fache der üblichen Streuung{}</translation>
    </message>
    <message>
        <source>a header and no rows; expected a recording</source>
        <translation>eine Kopfzeile und keine Zeilen; erwartet wird eine Aufzeichnung</translation>
    </message>
    <message>
        <source>a line in table {}, of a run that is not there,</source>
        <translation>eine Zeile der Tabelle {} zu einer Fahrt, die es nicht gibt,</translation>
    </message>
    <message>
        <source>a line of more than {} KB, or a quote that is never closed; expected a recording in CSV</source>
        <translation>eine Zeile von mehr als {} KB oder ein Anführungszeichen, das nie schließt; erwartet wird eine Aufzeichnung als CSV</translation>
    </message>
    <message>
        <source>a line of more than {} MB; expected a recording in CSV</source>
        <translation>eine Zeile von mehr als {} MB; erwartet wird eine Aufzeichnung als CSV</translation>
    </message>
    <message>
        <source>a name that is too long</source>
        <translation>ein Name, der zu lang ist</translation>
    </message>
    <message>
        <source>a name; two in a study</source>
        <translation>ein Name; zwei in einer Studie</translation>
    </message>
    <message>
        <source>a name; two in a study, the first is out</source>
        <translation>ein Name; zwei in einer Studie, der erste ist die Hinfahrt</translation>
    </message>
    <message>
        <source>a noise of {} %; more than 0 is needed, at most 100</source>
        <translation>ein Rauschen von {} %; nötig ist mehr als 0, höchstens 100</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a number above 0</source>
        <translation>eine Zahl über 0</translation>
    </message>
    <message>
        <source>a number above 0 and at most {}</source>
        <translation>eine Zahl über 0 und höchstens {}</translation>
    </message>
    <message>
        <source>a number above 0.5, at most {}</source>
        <translation>eine Zahl über 0,5, höchstens {}</translation>
    </message>
    <message>
        <source>a number between {} and {}</source>
        <translation>eine Zahl zwischen {} und {}</translation>
    </message>
    <message>
        <source>a number from 0 to 0.5</source>
        <translation>eine Zahl von 0 bis 0.5</translation>
    </message>
    <message>
        <source>a number from {} to {}</source>
        <translation>eine Zahl von {} bis {}</translation>
    </message>
    <message>
        <source>a number of minutes above 0</source>
        <translation>eine Zahl von Minuten über 0</translation>
    </message>
    <message>
        <source>a number of seconds from 0 to 3600</source>
        <translation>eine Anzahl Sekunden von 0 bis 3600</translation>
    </message>
    <message>
        <source>a number of seconds from 0.1 to 86400</source>
        <translation>eine Anzahl Sekunden von 0,1 bis 86400</translation>
    </message>
    <message>
        <source>a number of seconds, at most 90000 either way</source>
        <translation>eine Zahl von Sekunden, höchstens 90000 in jeder Richtung</translation>
    </message>
    <message>
        <source>a part of it is missing</source>
        <translation>ein Teil davon fehlt</translation>
    </message>
    <message>
        <source>a per cent above 0 and below 100</source>
        <translation>Prozent über 0 und unter 100</translation>
    </message>
    <message>
        <source>a photo, a clip or another file</source>
        <translation>ein Foto, ein Film oder eine andere Datei</translation>
    </message>
    <message>
        <source>a power of {}; more than {} and less than 1 is needed</source>
        <translation>eine Trennschärfe von {}; nötig ist mehr als {} und weniger als 1</translation>
    </message>
    <message>
        <source>a quote that is never closed; expected a &apos;&quot;&apos; at its end</source>
        <translation>ein Anführungszeichen, das nie schließt; erwartet wird ein &quot; am Ende</translation>
    </message>
    <message>
        <source>a recording is under way already</source>
        <translation>es wird schon aufgezeichnet</translation>
    </message>
    <message>
        <source>a recording of the demo is missing</source>
        <translation>eine Aufzeichnung der Demo fehlt</translation>
    </message>
    <message>
        <source>a reference that is none, like &apos;&amp;amp;&apos;</source>
        <translation>ein Verweis, der keiner ist, wie „&amp;amp;“</translation>
    </message>
    <message>
        <source>a reference to a character that XML does not know</source>
        <translation>ein Verweis auf ein Zeichen, das XML nicht kennt</translation>
    </message>
    <message>
        <source>a rig</source>
        <translation>eine Messausrüstung</translation>
    </message>
    <message>
        <source>a rig without an instrument; expected one at least</source>
        <translation>eine Messausrüstung ohne Messgerät; erwartet: mindestens eines</translation>
    </message>
    <message>
        <source>a road speed of {} km/h (--speed-kmh, or the study&apos;s road_speed.target_kmh)</source>
        <translation>eine Fahrgeschwindigkeit von {} km/h (--speed-kmh oder road_speed.target_kmh der Studie)</translation>
    </message>
    <message>
        <source>a run begins; what is left out is as it comes next</source>
        <translation>eine Fahrt beginnt; was fehlt, ist so, wie es als Nächstes kommt</translation>
    </message>
    <message>
        <source>a run cannot be tied to itself</source>
        <translation>eine Fahrt lässt sich nicht mit sich selbst verbinden</translation>
    </message>
    <message>
        <source>a run cannot be tied to itself; expected two runs, like 3 6</source>
        <translation>eine Fahrt kann nicht mit sich selbst verbunden werden; erwartet werden zwei Fahrten, wie 3 6</translation>
    </message>
    <message>
        <source>a run is under way; end it first</source>
        <translation>eine Fahrt läuft; beenden Sie sie zuerst</translation>
    </message>
    <message>
        <source>a run sheet</source>
        <translation>ein Fahrtenblatt</translation>
    </message>
    <message>
        <source>a second table begins at column {}; expected one table on a sheet</source>
        <translation>bei Spalte {} beginnt eine zweite Tabelle; erwartet wird eine Tabelle auf einem Blatt</translation>
    </message>
    <message>
        <source>a second table begins here; expected one table on a sheet</source>
        <translation>hier beginnt eine zweite Tabelle; erwartet wird eine Tabelle auf einem Blatt</translation>
    </message>
    <message>
        <source>a sequence over several days cannot be simulated</source>
        <translation>eine Folge über mehrere Tage lässt sich nicht simulieren</translation>
    </message>
    <message>
        <source>a share above 0.5, at most 0.9999</source>
        <translation>ein Anteil über 0.5, höchstens 0.9999</translation>
    </message>
    <message>
        <source>a share between 0 and 1</source>
        <translation>ein Anteil zwischen 0 und 1</translation>
    </message>
    <message>
        <source>a spreadsheet or an archive</source>
        <translation>eine Tabellenkalkulation oder ein Archiv</translation>
    </message>
    <message>
        <source>a stretch of {} km; more than 0 is needed, at most 100000</source>
        <translation>eine Messstrecke von {} km; nötig ist mehr als 0, höchstens 100000</translation>
    </message>
    <message>
        <source>a study holds at most {} runs</source>
        <translation>eine Studie fasst höchstens {} Fahrten</translation>
    </message>
    <message>
        <source>a tag or a comment that is too long</source>
        <translation>ein Tag oder ein Kommentar, der zu lang ist</translation>
    </message>
    <message>
        <source>a time of day like 05:40 or 05:40:30</source>
        <translation>eine Uhrzeit wie 05:40 oder 05:40:30</translation>
    </message>
    <message>
        <source>a timed accessory</source>
        <translation>ein Nebenverbraucher mit Zeitschaltung</translation>
    </message>
    <message>
        <source>a timed accessory was switched on</source>
        <translation>ein Verbraucher mit Zeitschalter wurde eingeschaltet</translation>
    </message>
    <message>
        <source>a tolerance above 0 after +-</source>
        <translation>eine Toleranz über 0 nach +-</translation>
    </message>
    <message>
        <source>a track point without a time</source>
        <translation>ein Wegpunkt ohne Zeit</translation>
    </message>
    <message>
        <source>a unit after &apos;=&apos;</source>
        <translation>eine Einheit nach „=“</translation>
    </message>
    <message>
        <source>a whole number from 1 to {}, none twice</source>
        <translation>eine ganze Zahl von 1 bis {}, keine zweimal</translation>
    </message>
    <message>
        <source>a whole number of pairs a block</source>
        <translation>eine ganze Zahl von Paaren je Block</translation>
    </message>
    <message>
        <source>a {} recording has no columns to name</source>
        <translation>eine Aufzeichnung in {} hat keine Spalten, die sich benennen ließen</translation>
    </message>
    <message>
        <source>about</source>
        <comment>a time</comment>
        <translation>etwa</translation>
    </message>
    <message>
        <source>accessories</source>
        <comment>column</comment>
        <translation>Nebenverbraucher an</translation>
    </message>
    <message>
        <source>accessory load</source>
        <translation>Nebenverbraucherlast</translation>
    </message>
    <message>
        <source>accessory load changed</source>
        <translation>Verbraucherlast geändert</translation>
    </message>
    <message>
        <source>accessory load {} W higher than it should be{}{}{}</source>
        <translation>die Nebenverbraucherlast war {} W höher, als sie sein sollte{}{}{}</translation>
    </message>
    <message>
        <source>accessory load {} W lower than it should be{}{}{}</source>
        <translation>die Nebenverbraucherlast war {} W niedriger, als sie sein sollte{}{}{}</translation>
    </message>
    <message>
        <source>accessory load</source>
        <comment>column</comment>
        <translation>Nebenverbraucherlast</translation>
    </message>
    <message>
        <source>added run {}: {}, {}, {}</source>
        <translation>Fahrt {} hinzugefügt: {}, {}, {}</translation>
    </message>
    <message>
        <source>adjusted during the run</source>
        <translation>während der Fahrt verstellt</translation>
    </message>
    <message>
        <source>age</source>
        <comment>of the last reading</comment>
        <translation>Alter</translation>
    </message>
    <message>
        <source>air</source>
        <comment>a check</comment>
        <translation>Luft</translation>
    </message>
    <message>
        <source>all of them</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>all runs</source>
        <translation>alle Fahrten</translation>
    </message>
    <message>
        <source>all</source>
        <comment>parts of the device</comment>
        <translation>alle</translation>
    </message>
    <message>
        <source>allowing for a bent drift</source>
        <translation>gekrümmte Drift</translation>
    </message>
    <message>
        <source>allowing for any number of looks</source>
        <translation>beliebig oft angesehen</translation>
    </message>
    <message>
        <source>allowing for pairs that resemble their neighbours</source>
        <translation>korrelierte Paare</translation>
    </message>
    <message>
        <source>also:</source>
        <comment>other names of a column</comment>
        <translation>auch:</translation>
    </message>
    <message>
        <source>alternator efficiency</source>
        <translation>Wirkungsgrad der Lichtmaschine</translation>
    </message>
    <message>
        <source>an accessory&apos;s name has small letters and no blanks</source>
        <translation>der Name eines Nebenverbrauchers hat kleine Buchstaben und keine Leerzeichen</translation>
    </message>
    <message>
        <source>an attribute of &lt;{}&gt; that cannot be read</source>
        <translation>ein Attribut von &lt;{}&gt;, das sich nicht lesen lässt</translation>
    </message>
    <message>
        <source>an attribute that is there twice</source>
        <translation>ein Attribut, das zweimal da ist</translation>
    </message>
    <message>
        <source>an effect of {} or more</source>
        <translation>ein Effekt von {} oder mehr</translation>
    </message>
    <message>
        <source>an empty line: the alarm was heard</source>
        <translation>eine leere Zeile: der Alarm wurde gehört</translation>
    </message>
    <message>
        <source>an encoding other than UTF-8, UTF-16 or Latin-1</source>
        <translation>eine andere Kodierung als UTF-8, UTF-16 oder Latin-1</translation>
    </message>
    <message>
        <source>an instrument</source>
        <translation>ein Messgerät</translation>
    </message>
    <message>
        <source>an instrument needs a name of ordinary characters</source>
        <translation>ein Messgerät braucht einen Namen aus gewöhnlichen Zeichen</translation>
    </message>
    <message>
        <source>an odd value lies outside</source>
        <translation>ein Sonderwert liegt außerhalb</translation>
    </message>
    <message>
        <source>an output of {} W (--output-w)</source>
        <translation>eine Leistung von {} W (--output-w)</translation>
    </message>
    <message>
        <source>an unknown amount</source>
        <translation>unbekannt viel</translation>
    </message>
    <message>
        <source>and {} more; &apos;bothways runs&apos; lists them</source>
        <translation>und {} weitere; „bothways runs“ listet sie auf</translation>
    </message>
    <message>
        <source>another end tag where &lt;/{}&gt; was expected</source>
        <translation>ein anderes End-Tag, wo &lt;/{}&gt; erwartet wurde</translation>
    </message>
    <message>
        <source>another program</source>
        <translation>einem anderen Programm</translation>
    </message>
    <message>
        <source>any number of looks</source>
        <translation>beliebig viele Blicke</translation>
    </message>
    <message>
        <source>any_look</source>
        <comment>companion</comment>
        <translation>beliebig oft angesehen</translation>
    </message>
    <message>
        <source>as in</source>
        <translation>wie in</translation>
    </message>
    <message>
        <source>as the run was noted, a number and a unit</source>
        <translation>wie die Fahrt notiert wurde, Zahl und Einheit</translation>
    </message>
    <message>
        <source>assumption not met</source>
        <translation>Annahme verletzt</translation>
    </message>
    <message>
        <source>at most {} lines</source>
        <translation>höchstens {} Zeilen</translation>
    </message>
    <message>
        <source>at the gates</source>
        <comment>runs begin and end</comment>
        <translation>an den Toren</translation>
    </message>
    <message>
        <source>at this pace the disk is full in {} min</source>
        <translation>bei diesem Tempo ist die Platte in {} min voll</translation>
    </message>
    <message>
        <source>bars</source>
        <translation>Striche</translation>
    </message>
    <message>
        <source>baseline</source>
        <translation>Referenz</translation>
    </message>
    <message>
        <source>baseline (A)</source>
        <translation>Referenz (A)</translation>
    </message>
    <message>
        <source>baseline stayed</source>
        <translation>beständige Referenz</translation>
    </message>
    <message>
        <source>baseline</source>
        <comment>a check</comment>
        <translation>Referenz</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>Batterie</translation>
    </message>
    <message>
        <source>battery at the end</source>
        <comment>column</comment>
        <translation>Batterie am Ende</translation>
    </message>
    <message>
        <source>battery at the start</source>
        <comment>column</comment>
        <translation>Batterie am Anfang</translation>
    </message>
    <message>
        <source>battery not balanced</source>
        <translation>Batterie nicht ausgeglichen</translation>
    </message>
    <message>
        <source>before run {}: {} of {} ticked</source>
        <translation>vor Fahrt {}: {} von {} abgehakt</translation>
    </message>
    <message>
        <source>before</source>
        <comment>run</comment>
        <translation>zuvor</translation>
    </message>
    <message>
        <source>began {} min after the cold start; warming up bends the drift, and no design takes that out</source>
        <translation>begann {} min nach dem Kaltstart; der Warmlauf krümmt die Drift, und kein Versuchsplan rechnet das heraus</translation>
    </message>
    <message>
        <source>bent drift</source>
        <translation>gekrümmte Drift</translation>
    </message>
    <message>
        <source>block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>block means</source>
        <translation>Blockmittel</translation>
    </message>
    <message>
        <source>block {}, {} of {} pairs</source>
        <translation>Block {}, {} von {} Paaren</translation>
    </message>
    <message>
        <source>block</source>
        <comment>after in</comment>
        <translation>Block</translation>
    </message>
    <message>
        <source>blocks</source>
        <comment>after in</comment>
        <translation>Blöcken</translation>
    </message>
    <message>
        <source>blocks</source>
        <comment>companion</comment>
        <translation>Blockmittel</translation>
    </message>
    <message>
        <source>borrowed</source>
        <comment>companion</comment>
        <translation>Rauschen früherer Tage</translation>
    </message>
    <message>
        <source>both configurations would be {}; expected two names</source>
        <translation>beide Konfigurationen hießen dann {}; erwartet werden zwei Namen</translation>
    </message>
    <message>
        <source>both directions would be {}; expected two names</source>
        <translation>beide Richtungen hießen dann {}; erwartet werden zwei Namen</translation>
    </message>
    <message>
        <source>both gates are the same place; expected one at each end of the stretch</source>
        <translation>beide Tore sind derselbe Ort; erwartet wird eines an jedem Ende der Messstrecke</translation>
    </message>
    <message>
        <source>both points should be {}; expected two values that are far apart</source>
        <translation>beide Punkte sollen {} sein; erwartet: zwei weit auseinanderliegende Werte</translation>
    </message>
    <message>
        <source>both points show {}; expected two readings that are far apart</source>
        <translation>beide Punkte zeigen {}; erwartet: zwei weit auseinanderliegende Ablesungen</translation>
    </message>
    <message>
        <source>bothways: stopped before the end</source>
        <translation>bothways: vor dem Ende angehalten</translation>
    </message>
    <message>
        <source>bothways: stopped by a fault of its own: {}</source>
        <translation>bothways: durch einen eigenen Fehler angehalten: {}</translation>
    </message>
    <message>
        <source>bothways: the results cannot be written to standard output</source>
        <translation>bothways: Die Ergebnisse lassen sich nicht auf die Standardausgabe schreiben</translation>
    </message>
    <message>
        <source>bracket</source>
        <comment>companion</comment>
        <translation>Eingabelung</translation>
    </message>
    <message>
        <source>bracketing</source>
        <translation>Eingabelung</translation>
    </message>
    <message>
        <source>by hand</source>
        <comment>runs begin and end</comment>
        <translation>von Hand</translation>
    </message>
    <message>
        <source>by marks that an instrument sends</source>
        <comment>runs begin and end</comment>
        <translation>durch Marken, die ein Instrument sendet</translation>
    </message>
    <message>
        <source>by the target speed</source>
        <comment>runs begin and end</comment>
        <translation>durch die Zielgeschwindigkeit</translation>
    </message>
    <message>
        <source>cannot be made: the disk is full</source>
        <translation>lässt sich nicht anlegen: Der Datenträger ist voll</translation>
    </message>
    <message>
        <source>cannot be made: {}</source>
        <translation>lässt sich nicht anlegen: {}</translation>
    </message>
    <message>
        <source>cannot be put back: it has no consumption</source>
        <translation>kann nicht wieder gewertet werden: kein Verbrauch</translation>
    </message>
    <message>
        <source>cannot be read (no permission?); expected a study</source>
        <translation>lässt sich nicht lesen (keine Berechtigung?); erwartet wird eine Studie</translation>
    </message>
    <message>
        <source>cannot be read or written ({}); nothing was changed</source>
        <translation>lässt sich nicht lesen oder schreiben ({}); nichts wurde geändert</translation>
    </message>
    <message>
        <source>cannot be read: {}</source>
        <translation>lässt sich nicht lesen: {}</translation>
    </message>
    <message>
        <source>cannot be read: {}; expected a study</source>
        <translation>lässt sich nicht lesen: {}; erwartet wird eine Studie</translation>
    </message>
    <message>
        <source>cannot be told in L/100 km; {} needs a distance</source>
        <translation>lässt sich nicht in l/100 km angeben; {} braucht eine Strecke</translation>
    </message>
    <message>
        <source>cannot be written: {}</source>
        <translation>lässt sich nicht schreiben: {}</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>nicht entscheidbar</translation>
    </message>
    <message>
        <source>changed {}: {}</source>
        <translation>{} geändert: {}</translation>
    </message>
    <message>
        <source>changes at switches</source>
        <translation>Sprünge beim Wechsel</translation>
    </message>
    <message>
        <source>channel</source>
        <translation>Kanal</translation>
    </message>
    <message>
        <source>check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>claimed: {}</source>
        <translation>behauptet: {}</translation>
    </message>
    <message>
        <source>clocks: {}</source>
        <translation>Uhren: {}</translation>
    </message>
    <message>
        <source>closed design</source>
        <translation>geschlossener Versuchsplan</translation>
    </message>
    <message>
        <source>cold start</source>
        <translation>Kaltstart</translation>
    </message>
    <message>
        <source>column &apos;{}&apos;</source>
        <translation>Spalte „{}“</translation>
    </message>
    <message>
        <source>column &apos;{}&apos;: &apos;{}&apos; is no time; expected seconds like 12.5, or a date and time like 2026-05-09T05:40:00</source>
        <translation>Spalte „{}“: „{}“ ist keine Zeit; erwartet werden Sekunden wie 12.5 oder Datum und Uhrzeit wie 2026-05-09T05:40:00</translation>
    </message>
    <message>
        <source>column {}</source>
        <translation>Spalte {}</translation>
    </message>
    <message>
        <source>column</source>
        <comment>of a run sheet</comment>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>columns kept without a meaning: {}</source>
        <translation>Spalten ohne Bedeutung, die erhalten bleiben ({})</translation>
    </message>
    <message>
        <source>columns of your own</source>
        <comment>column</comment>
        <translation>eigene Spalten</translation>
    </message>
    <message>
        <source>columns taken as {}</source>
        <translation>Spalten gedeutet als {}</translation>
    </message>
    <message>
        <source>commas</source>
        <translation>Kommas</translation>
    </message>
    <message>
        <source>confidence</source>
        <translation>Vertrauensniveau</translation>
    </message>
    <message>
        <source>configuration</source>
        <translation>Konfiguration</translation>
    </message>
    <message>
        <source>configuration or direction</source>
        <translation>configuration (Konfiguration) oder direction (Richtung)</translation>
    </message>
    <message>
        <source>configuration {} -&gt; {}</source>
        <translation>Konfiguration {} → {}</translation>
    </message>
    <message>
        <source>configuration</source>
        <comment>column</comment>
        <translation>Konfiguration</translation>
    </message>
    <message>
        <source>configuration, direction, start and one consumption must be there; every other column may be. Any other name is kept as it is, without a meaning.</source>
        <translation>configuration, direction, start und ein Verbrauch müssen da sein; jede andere Spalte darf da sein. Jeder andere Name bleibt erhalten, wie er ist, ohne Bedeutung.</translation>
    </message>
    <message>
        <source>connected again {} time</source>
        <translation>{}-mal neu verbunden</translation>
    </message>
    <message>
        <source>connected again {} times</source>
        <translation>{}-mal neu verbunden</translation>
    </message>
    <message>
        <source>consumption</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>consumption in L/100 km</source>
        <translation>Verbrauch in l/100 km</translation>
    </message>
    <message>
        <source>consumption {} L/100 km (of the baseline)</source>
        <translation>Verbrauch {} L/100 km (der Referenz)</translation>
    </message>
    <message>
        <source>consumption {} kWh/100 km (of the baseline)</source>
        <translation>Verbrauch {} kWh/100 km (der Referenz)</translation>
    </message>
    <message>
        <source>consumption</source>
        <comment>column</comment>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>consumption</source>
        <comment>what a channel is read for</comment>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>control vehicle</source>
        <comment>column</comment>
        <translation>Kontrollfahrzeug</translation>
    </message>
    <message>
        <source>correlated</source>
        <comment>companion</comment>
        <translation>korrelierte Paare</translation>
    </message>
    <message>
        <source>cost of the drag</source>
        <translation>Aufwand des Luftwiderstands</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>gewertet</translation>
    </message>
    <message>
        <source>counted or discarded; empty: counted</source>
        <translation>counted oder discarded; leer: counted</translation>
    </message>
    <message>
        <source>counted run</source>
        <comment>after from</comment>
        <translation>gewerteten Fahrt</translation>
    </message>
    <message>
        <source>counted runs</source>
        <comment>after from</comment>
        <translation>gewerteten Fahrten</translation>
    </message>
    <message>
        <source>counted</source>
        <comment>status</comment>
        <translation>gewertet</translation>
    </message>
    <message>
        <source>counting began before the vehicle was cruising: {} % above the target speed</source>
        <translation>die Messung begann, bevor das Fahrzeug gleichmäßig fuhr: {} % über der Zielgeschwindigkeit</translation>
    </message>
    <message>
        <source>counting began before the vehicle was cruising: {} % below the target speed</source>
        <translation>die Messung begann, bevor das Fahrzeug gleichmäßig fuhr: {} % unter der Zielgeschwindigkeit</translation>
    </message>
    <message>
        <source>counting run {} again</source>
        <translation>Fahrt {} zählt wieder</translation>
    </message>
    <message>
        <source>counting runs {} again</source>
        <translation>Fahrten {} zählen wieder</translation>
    </message>
    <message>
        <source>curve</source>
        <comment>a check</comment>
        <translation>Krümmung</translation>
    </message>
    <message>
        <source>curved drift</source>
        <translation>gekrümmte Drift</translation>
    </message>
    <message>
        <source>curved</source>
        <comment>companion</comment>
        <translation>gekrümmte Drift</translation>
    </message>
    <message>
        <source>cut {} into {} run: {} new, {} given their part</source>
        <translation>{} in {} Fahrt geschnitten: {} neu, {} mit ihrem Teil versehen</translation>
    </message>
    <message>
        <source>cut {} into {} runs: {} new, {} given their part</source>
        <translation>{} in {} Fahrten geschnitten: {} neu, {} mit ihrem Teil versehen</translation>
    </message>
    <message>
        <source>date</source>
        <comment>column</comment>
        <translation>Datum</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>day {}</source>
        <translation>Tag {}</translation>
    </message>
    <message>
        <source>day {}: {} ({} interval: {})</source>
        <translation>Tag {}: {} ({}-Intervall: {})</translation>
    </message>
    <message>
        <source>days agree</source>
        <translation>einige Tage</translation>
    </message>
    <message>
        <source>days</source>
        <comment>a check</comment>
        <translation>einige Tage</translation>
    </message>
    <message>
        <source>days</source>
        <comment>companion</comment>
        <translation>Tage</translation>
    </message>
    <message>
        <source>dealing the labels</source>
        <translation>Vertauschen der Zuordnung</translation>
    </message>
    <message>
        <source>decimal commas</source>
        <translation>Dezimalkomma</translation>
    </message>
    <message>
        <source>decimal points</source>
        <translation>Dezimalpunkt</translation>
    </message>
    <message>
        <source>default {}</source>
        <translation>Vorgabe {}</translation>
    </message>
    <message>
        <source>device</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>device (B)</source>
        <translation>Gerät (B)</translation>
    </message>
    <message>
        <source>device</source>
        <comment>of the system</comment>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>df</source>
        <comment>degrees of freedom</comment>
        <translation>FG</translation>
    </message>
    <message>
        <source>did you mean &apos;{}&apos; by &apos;{}&apos;?</source>
        <translation>ist mit „{1}“ „{0}“ gemeint?</translation>
    </message>
    <message>
        <source>difference in consumption, % (left of zero: less)</source>
        <translation>Unterschied im Verbrauch, % (links von null: weniger)</translation>
    </message>
    <message>
        <source>direction</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>direction {} -&gt; {}</source>
        <translation>Richtung {} → {}</translation>
    </message>
    <message>
        <source>direction</source>
        <comment>a check</comment>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>direction</source>
        <comment>column</comment>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>verworfen</translation>
    </message>
    <message>
        <source>discarded run {}: {}</source>
        <translation>Fahrt {} verworfen: {}</translation>
    </message>
    <message>
        <source>discarded runs {}: {}</source>
        <translation>Fahrten {} verworfen: {}</translation>
    </message>
    <message>
        <source>discarded</source>
        <comment>status</comment>
        <translation>verworfen</translation>
    </message>
    <message>
        <source>discarded: {}</source>
        <translation>verworfen: {}</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>Strecke</translation>
    </message>
    <message>
        <source>distance</source>
        <comment>column</comment>
        <translation>Strecke</translation>
    </message>
    <message>
        <source>does not name a unit that can be taken here; expected {}</source>
        <translation>nennt keine Einheit, die hier genommen werden kann; erwartet wurde {}</translation>
    </message>
    <message>
        <source>does not take this change ({}); nothing was changed</source>
        <translation>nimmt diese Änderung nicht an ({}); nichts wurde geändert</translation>
    </message>
    <message>
        <source>done (also with no verdict)</source>
        <translation>fertig (auch ohne Urteil)</translation>
    </message>
    <message>
        <source>doubtful</source>
        <comment>grade of a finding</comment>
        <translation>zweifelhaft</translation>
    </message>
    <message>
        <source>drift over the day: {} an hour</source>
        <translation>Drift über den Tag: {} je Stunde</translation>
    </message>
    <message>
        <source>drive efficiency</source>
        <translation>Wirkungsgrad des Antriebs</translation>
    </message>
    <message>
        <source>drive slipped</source>
        <translation>Antrieb rutschte</translation>
    </message>
    <message>
        <source>driven over {} days</source>
        <translation>gefahren an {} Tagen</translation>
    </message>
    <message>
        <source>duration</source>
        <comment>column</comment>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>each day for itself</source>
        <translation>jeder Tag für sich</translation>
    </message>
    <message>
        <source>each line once</source>
        <translation>jede Zeile einmal</translation>
    </message>
    <message>
        <source>effect</source>
        <translation>Effekt</translation>
    </message>
    <message>
        <source>elements nested too deep</source>
        <translation>zu tief verschachtelte Elemente</translation>
    </message>
    <message>
        <source>ended</source>
        <comment>of an instrument</comment>
        <translation>zu Ende</translation>
    </message>
    <message>
        <source>ends the recording</source>
        <translation>beendet die Aufzeichnung</translation>
    </message>
    <message>
        <source>energy used</source>
        <translation>verbrauchte Energie</translation>
    </message>
    <message>
        <source>entities that grow without bound</source>
        <translation>Entitäten, die ohne Grenze wachsen</translation>
    </message>
    <message>
        <source>equal scatter</source>
        <translation>gleiche Streuung</translation>
    </message>
    <message>
        <source>equivalent</source>
        <comment>verdict</comment>
        <translation>kein relevanter Unterschied</translation>
    </message>
    <message>
        <source>every part is empty; expected a run that starts before the recording ends</source>
        <translation>jeder Teil ist leer; erwartet wird eine Fahrt, die vor dem Ende der Aufzeichnung beginnt</translation>
    </message>
    <message>
        <source>evidence</source>
        <comment>column</comment>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>example</source>
        <comment>of a cell</comment>
        <translation>Beispiel</translation>
    </message>
    <message>
        <source>exists already; expected a name that is free</source>
        <translation>gibt es schon; erwartet wird ein freier Name</translation>
    </message>
    <message>
        <source>expected &quot;channels&quot;: a list</source>
        <translation>erwartet: „channels“ als Liste</translation>
    </message>
    <message>
        <source>expected &quot;gates&quot;: [LAT, LON, LAT, LON, METRES]</source>
        <translation>erwartet wird &quot;gates&quot;: [BREITE, LÄNGE, BREITE, LÄNGE, METER]</translation>
    </message>
    <message>
        <source>expected &quot;instruments&quot;: a list</source>
        <translation>erwartet: „instruments“ als Liste</translation>
    </message>
    <message>
        <source>expected &quot;version&quot;: {}</source>
        <translation>erwartet: „version“: {}</translation>
    </message>
    <message>
        <source>expected --rig NAME or --from KIND:ADDRESS</source>
        <translation>erwartet wird --rig NAME oder --from ART:ADRESSE</translation>
    </message>
    <message>
        <source>expected a new name for configuration {}, on one line</source>
        <translation>erwartet wird ein neuer Name für die Konfiguration {}, in einer Zeile</translation>
    </message>
    <message>
        <source>expected a new name for direction {}, on one line</source>
        <translation>erwartet wird ein neuer Name für die Richtung {}, in einer Zeile</translation>
    </message>
    <message>
        <source>expected a run&apos;s start as a number of seconds</source>
        <translation>erwartet wird der Start einer Fahrt als eine Zahl von Sekunden</translation>
    </message>
    <message>
        <source>expected a whole number from 1 to {}</source>
        <translation>erwartet wird eine ganze Zahl von 1 bis {}</translation>
    </message>
    <message>
        <source>expected a word for the mark</source>
        <translation>erwartet wird ein Wort für die Marke</translation>
    </message>
    <message>
        <source>expected at least one part of the recording</source>
        <translation>erwartet wird mindestens ein Teil der Aufzeichnung</translation>
    </message>
    <message>
        <source>expected one of a run sheet, --trace FILE and --recording NAME</source>
        <translation>erwartet wird eines von dreien: ein Fahrtenblatt, --trace DATEI oder --recording NAME</translation>
    </message>
    <message>
        <source>expected seconds and a word for each mark</source>
        <translation>erwartet werden zu jeder Marke Sekunden und ein Wort</translation>
    </message>
    <message>
        <source>expected seconds from the run&apos;s start</source>
        <translation>erwartet werden Sekunden ab dem Start der Fahrt</translation>
    </message>
    <message>
        <source>expected the weather, like temperature_c=14 wind_ms=2</source>
        <translation>erwartet: das Wetter, etwa temperature_c=14 wind_ms=2</translation>
    </message>
    <message>
        <source>expected {} in braces</source>
        <translation>erwartet: {} in geschweiften Klammern</translation>
    </message>
    <message>
        <source>expected {}</source>
        <comment>a number</comment>
        <translation>erwartet: {}</translation>
    </message>
    <message>
        <source>fell silent {} time</source>
        <translation>{}-mal verstummt</translation>
    </message>
    <message>
        <source>fell silent {} times</source>
        <translation>{}-mal verstummt</translation>
    </message>
    <message>
        <source>file:PATH</source>
        <translation>file:PFAD</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>finds</source>
        <translation>findet</translation>
    </message>
    <message>
        <source>fine display</source>
        <translation>feine Anzeige</translation>
    </message>
    <message>
        <source>found {} times in 100</source>
        <translation>{} von 100 Mal gefunden</translation>
    </message>
    <message>
        <source>fragile</source>
        <translation>nicht robust</translation>
    </message>
    <message>
        <source>from</source>
        <comment>source of a channel</comment>
        <translation>aus</translation>
    </message>
    <message>
        <source>fuel and kWh cannot be compared; expected one of them in a study</source>
        <translation>Kraftstoff und kWh lassen sich nicht vergleichen; erwartet wird nur eines von beiden in einer Studie</translation>
    </message>
    <message>
        <source>fuel rate</source>
        <translation>Kraftstoffstrom</translation>
    </message>
    <message>
        <source>fuel used</source>
        <translation>verbrauchter Kraftstoff</translation>
    </message>
    <message>
        <source>gal (US)</source>
        <translation>gal (US)</translation>
    </message>
    <message>
        <source>generator efficiency</source>
        <translation>Wirkungsgrad des Generators</translation>
    </message>
    <message>
        <source>generator speed</source>
        <translation>Generatordrehzahl</translation>
    </message>
    <message>
        <source>hPa</source>
        <comment>unit</comment>
        <translation>hPa</translation>
    </message>
    <message>
        <source>has a formula without its value; expected the workbook to be saved by the program that reckons it</source>
        <translation>enthält eine Formel ohne ihren Wert; die Arbeitsmappe muss von dem Programm gespeichert sein, das sie berechnet</translation>
    </message>
    <message>
        <source>has a name of {} bytes; expected at most {}</source>
        <translation>hat einen Namen von {} Bytes; erwartet werden höchstens {}</translation>
    </message>
    <message>
        <source>has a quote in the header that never closes, or text after one; expected names of columns</source>
        <translation>hat in der Kopfzeile ein Anführungszeichen, das nie schließt, oder Text danach; erwartet werden Namen von Spalten</translation>
    </message>
    <message>
        <source>has a quote that never closes; expected a second one</source>
        <translation>hat ein Anführungszeichen, das nie schließt; erwartet wird ein zweites</translation>
    </message>
    <message>
        <source>has an offset from UTC where the other runs have none; expected one on all or on none</source>
        <translation>hat einen Abstand zu UTC, wo die anderen Fahrten keinen haben; erwartet wird einer bei allen oder bei keiner</translation>
    </message>
    <message>
        <source>has lost the recording that is being made: it was taken out</source>
        <translation>hat die laufende Aufzeichnung verloren: Sie wurde herausgenommen</translation>
    </message>
    <message>
        <source>has no baseline &apos;{}&apos;; expected &apos;{}&apos; or &apos;{}&apos;</source>
        <translation>hat keine Referenz „{}“; erwartet wird „{}“ oder „{}“</translation>
    </message>
    <message>
        <source>has no column {}; expected a name of its header</source>
        <translation>hat keine Spalte {}; erwartet wird ein Name aus der Kopfzeile</translation>
    </message>
    <message>
        <source>has no consumption, so it cannot be put back</source>
        <translation>hat keinen Verbrauch und kann nicht wieder gewertet werden</translation>
    </message>
    <message>
        <source>has no folder to lie in; expected one that exists</source>
        <translation>liegt in einem Ordner, den es nicht gibt; erwartet wird ein vorhandener</translation>
    </message>
    <message>
        <source>has no name but a value on line {}; expected a name in the header</source>
        <translation>hat keinen Namen, aber einen Wert in Zeile {}; erwartet wird ein Name in der Kopfzeile</translation>
    </message>
    <message>
        <source>has no offset from UTC where the other runs have one; expected one like +02:00 or Z on all or on none</source>
        <translation>hat keinen Abstand zu UTC, wo die anderen Fahrten einen haben; erwartet wird einer wie +02:00 oder Z bei allen oder bei keiner</translation>
    </message>
    <message>
        <source>has no sheet &apos;{}&apos;; expected one of {}</source>
        <translation>hat kein Blatt „{}“; erwartet wird eines von {}</translation>
    </message>
    <message>
        <source>has no sheet; expected one with runs, a line each</source>
        <translation>hat kein Blatt; erwartet wird eines mit Fahrten, je Zeile eine</translation>
    </message>
    <message>
        <source>has no unit that is known; expected one of {}, as in --column &apos;{}={}&apos;</source>
        <translation>hat keine bekannte Einheit; erwartet wird eines von {}, zum Beispiel --column &apos;{}={}&apos;</translation>
    </message>
    <message>
        <source>has no walk-round yet; give it one: --list &apos;no loose nut; belts on; tyre pressure = kPa +- 10&apos;</source>
        <translation>hat noch keinen Rundgang; geben Sie ihr einen: --list &apos;keine Mutter lose; Riemen auf; Reifendruck = kPa +- 10&apos;</translation>
    </message>
    <message>
        <source>has text after the closing quote; expected the next field (a quote within quotes is written twice)</source>
        <translation>hat Text nach dem schließenden Anführungszeichen; erwartet wird das nächste Feld (ein Anführungszeichen innerhalb wird doppelt geschrieben)</translation>
    </message>
    <message>
        <source>has times of day; expected a date (YYYY-MM-DD) with them</source>
        <translation>enthält Uhrzeiten; erwartet wird ein Datum (JJJJ-MM-TT) dazu</translation>
    </message>
    <message>
        <source>has {} numbers that the study has already; without this column the runs are numbered on from its last</source>
        <translation>hat {} Nummern, die die Studie schon hat; ohne diese Spalte werden die Fahrten ab deren letzter weiter nummeriert</translation>
    </message>
    <message>
        <source>has {} sheets with runs: {}; expected to be told which: --sheet NAME</source>
        <translation>hat {} Blätter mit Fahrten: {}; bitte sagen, welches: --sheet NAME</translation>
    </message>
    <message>
        <source>headline</source>
        <translation>Hauptergebnis</translation>
    </message>
    <message>
        <source>heating value in MJ/L</source>
        <translation>Heizwert in MJ/l</translation>
    </message>
    <message>
        <source>held speed: {} km/h; set road_speed.target_kmh to choose it</source>
        <translation>gehaltene Geschwindigkeit: {} km/h; road_speed.target_kmh zu setzen, wählt sie</translation>
    </message>
    <message>
        <source>hidden columns as well: {}</source>
        <translation>den ausgeblendeten Spalten: {}</translation>
    </message>
    <message>
        <source>hidden lines as well: {}</source>
        <translation>den ausgeblendeten Zeilen: {}</translation>
    </message>
    <message>
        <source>highest output, W</source>
        <translation>höchste Leistung, W</translation>
    </message>
    <message>
        <source>highest rotor speed</source>
        <comment>column</comment>
        <translation>höchste Rotordrehzahl</translation>
    </message>
    <message>
        <source>highest rotor speed, {}</source>
        <translation>höchste Rotordrehzahl, {}</translation>
    </message>
    <message>
        <source>holds a table that Bothways did not make ({}); it is left as it is</source>
        <translation>enthält eine Tabelle, die nicht von Bothways stammt ({}); die Datei bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>holds a trigger that Bothways did not make ({}); it is left as it is</source>
        <translation>enthält einen Trigger, der nicht von Bothways stammt ({}); die Datei bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>holds a view that Bothways did not make ({}); it is left as it is</source>
        <translation>enthält eine Sicht, die nicht von Bothways stammt ({}); die Datei bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>holds an index that Bothways did not make ({}); it is left as it is</source>
        <translation>enthält einen Index, der nicht von Bothways stammt ({}); die Datei bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>holds more or larger tables than a study has; it is left as it is</source>
        <translation>enthält mehr oder größere Tabellen, als eine Studie hat; die Datei bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>holds more runs than a study can have ({}); it is left as it is</source>
        <translation>enthält mehr Fahrten, als eine Studie haben kann ({}); die Datei bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>holds more than {} texts; expected a run sheet</source>
        <translation>enthält mehr als {} Texte; erwartet wird ein Fahrtenblatt</translation>
    </message>
    <message>
        <source>holds something that Bothways did not make ({}); it is left as it is</source>
        <translation>enthält etwas, das nicht von Bothways stammt ({}); die Datei bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>holds the error {}; expected a value</source>
        <translation>enthält den Fehler {}; erwartet wird ein Wert</translation>
    </message>
    <message>
        <source>holds {} in another form than Bothways made it; it is left as it is</source>
        <translation>enthält {} in anderer Form, als Bothways es angelegt hat; die Datei bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>holds</source>
        <comment>a check</comment>
        <translation>erfüllt</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>hours above 0</source>
        <translation>Stunden über 0</translation>
    </message>
    <message>
        <source>hours since the first run began</source>
        <translation>Stunden seit Beginn der ersten Fahrt</translation>
    </message>
    <message>
        <source>humidity</source>
        <comment>column</comment>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>imported {} run from {}</source>
        <translation>{} Fahrt aus {} importiert</translation>
    </message>
    <message>
        <source>imported {} runs from {}</source>
        <translation>{} Fahrten aus {} importiert</translation>
    </message>
    <message>
        <source>imported {}: {} row, {} s, channels {}</source>
        <translation>{} importiert: {} Zeile, {} s, Kanäle {}</translation>
    </message>
    <message>
        <source>imported {}: {} rows, {} s, channels {}</source>
        <translation>{} importiert: {} Zeilen, {} s, Kanäle {}</translation>
    </message>
    <message>
        <source>in words</source>
        <translation>in Worten</translation>
    </message>
    <message>
        <source>independent pairs</source>
        <translation>unabhängige Paare</translation>
    </message>
    <message>
        <source>induction factor: {} given; 0 to below 1 is expected (1/3 at the best operating point)</source>
        <translation>Induktionsfaktor: {} angegeben; erwartet wird 0 bis unter 1 (1/3 im besten Betriebspunkt)</translation>
    </message>
    <message>
        <source>instrument &apos;{}&apos; gave no reading</source>
        <translation>Messgerät „{}“ gab keinen Messwert</translation>
    </message>
    <message>
        <source>instrument &apos;{}&apos;: &apos;{}&apos; is no address for {}; expected {}</source>
        <translation>Messgerät „{}“: „{}“ ist keine Adresse für {}; erwartet: {}</translation>
    </message>
    <message>
        <source>instrument &apos;{}&apos;: &apos;{}&apos; is no value of service 01 that is read; expected one of {}</source>
        <translation>Messgerät „{}“: „{}“ ist kein Wert des Dienstes 01, der gelesen wird; erwartet: einer von {}</translation>
    </message>
    <message>
        <source>instrument &apos;{}&apos;: a channel needs a source and a name of ordinary characters</source>
        <translation>Messgerät „{}“: Ein Kanal braucht eine Quelle und einen Namen aus gewöhnlichen Zeichen</translation>
    </message>
    <message>
        <source>instrument &apos;{}&apos;: channel &apos;{}&apos; needs a factor other than 0 and an offset that is a number</source>
        <translation>Messgerät „{}“: Kanal „{}“ braucht einen Faktor ungleich 0 und einen Versatz, der eine Zahl ist</translation>
    </message>
    <message>
        <source>instrument &apos;{}&apos;: fuel is &apos;{}&apos;; expected petrol, e10, diesel or nothing</source>
        <translation>Messgerät „{}“: fuel ist „{}“; erwartet: petrol, e10, diesel oder nichts</translation>
    </message>
    <message>
        <source>instrument &apos;{}&apos;: poll_s is {}; expected 0 to 3600 s</source>
        <translation>Messgerät „{}“: poll_s ist {}; erwartet: 0 bis 3600 s</translation>
    </message>
    <message>
        <source>instrument &apos;{}&apos;: speed is {}; expected 1 to 100 times</source>
        <translation>Messgerät „{}“: speed ist {}; erwartet: 1- bis 100-fach</translation>
    </message>
    <message>
        <source>instrument &apos;{}&apos;: there is no kind &apos;{}&apos;; expected lines, nmea, modbus, obd or replay</source>
        <translation>Messgerät „{}“: Die Art „{}“ gibt es nicht; erwartet: lines, nmea, modbus, obd oder replay</translation>
    </message>
    <message>
        <source>instrument &apos;{}&apos;: unit is {}; expected the device&apos;s number, 0 to 255</source>
        <translation>Messgerät „{}“: unit ist {}; erwartet: die Nummer des Geräts, 0 bis 255</translation>
    </message>
    <message>
        <source>instrument &apos;{}&apos;: which registers are read? Expected a channel with a source such as holding:3:u16</source>
        <translation>Messgerät „{}“: Welche Register werden gelesen? Erwartet: ein Kanal mit einer Quelle wie holding:3:u16</translation>
    </message>
    <message>
        <source>instrument &apos;{}&apos;: {}</source>
        <translation>Messgerät „{}“: {}</translation>
    </message>
    <message>
        <source>interim</source>
        <translation>vorläufig</translation>
    </message>
    <message>
        <source>interval</source>
        <translation>Intervall</translation>
    </message>
    <message>
        <source>interval: δ ± t(1 − α/2, df)·se(δ)</source>
        <translation>Intervall: δ ± t(1 − α/2, FG)·se(δ)</translation>
    </message>
    <message>
        <source>is UTF-16 text; expected UTF-8</source>
        <translation>ist UTF-16-Text; erwartet wird UTF-8</translation>
    </message>
    <message>
        <source>is XML with &lt;{}&gt; outermost; expected &lt;gpx&gt;</source>
        <translation>ist XML mit &lt;{}&gt; ganz außen; erwartet wird &lt;gpx&gt;</translation>
    </message>
    <message>
        <source>is a PDF; expected .xlsx, .ods, or text with columns</source>
        <translation>ist ein PDF; erwartet wird .xlsx, .ods oder Text mit Spalten</translation>
    </message>
    <message>
        <source>is a binary workbook (.xlsb); expected .xlsx, .ods, or text with columns</source>
        <translation>ist eine binäre Arbeitsmappe (.xlsb); erwartet wird .xlsx, .ods oder Text mit Spalten</translation>
    </message>
    <message>
        <source>is a damaged or unfinished workbook; expected .xlsx, .ods, or text with columns</source>
        <translation>ist eine beschädigte oder unvollständige Arbeitsmappe; erwartet wird .xlsx, .ods oder Text mit Spalten</translation>
    </message>
    <message>
        <source>is a device; expected {}</source>
        <translation>ist ein Gerät; erwartet wird {}</translation>
    </message>
    <message>
        <source>is a directory</source>
        <translation>ist ein Ordner</translation>
    </message>
    <message>
        <source>is a directory; expected a study</source>
        <translation>ist ein Ordner; erwartet wird eine Studie</translation>
    </message>
    <message>
        <source>is a directory; expected {}</source>
        <translation>ist ein Ordner; erwartet wird {}</translation>
    </message>
    <message>
        <source>is a file of an old office program (.xls); expected .xlsx, .ods, or text with columns</source>
        <translation>ist eine Datei eines alten Büroprogramms (.xls); erwartet wird .xlsx, .ods oder Text mit Spalten</translation>
    </message>
    <message>
        <source>is a picture; expected .xlsx, .ods, or text with columns</source>
        <translation>ist ein Bild; erwartet wird .xlsx, .ods oder Text mit Spalten</translation>
    </message>
    <message>
        <source>is a pipe or a device; expected a study</source>
        <translation>ist eine Pipe oder ein Gerät; erwartet wird eine Studie</translation>
    </message>
    <message>
        <source>is a pipe, a socket or a device</source>
        <translation>ist eine Pipe, ein Socket oder ein Gerät</translation>
    </message>
    <message>
        <source>is a pipe; expected {}</source>
        <translation>ist eine Pipe; erwartet wird {}</translation>
    </message>
    <message>
        <source>is a pivot table, which sums up; expected the runs themselves, a line each</source>
        <translation>ist eine Pivot-Tabelle, die zusammenfasst; erwartet werden die Fahrten selbst, je Zeile eine</translation>
    </message>
    <message>
        <source>is a second consumption beside &apos;{}&apos;; expected exactly one</source>
        <translation>ist ein zweiter Verbrauch neben „{}“; erwartet wird genau einer</translation>
    </message>
    <message>
        <source>is a socket; expected {}</source>
        <translation>ist ein Socket; erwartet wird {}</translation>
    </message>
    <message>
        <source>is a study, which does not come through a pipe; give its name</source>
        <translation>ist eine Studie, die nicht durch eine Pipe kommt; geben Sie ihren Namen an</translation>
    </message>
    <message>
        <source>is a study, which holds its recordings; --shift is for run sheets</source>
        <translation>ist eine Studie, die ihre Aufzeichnungen enthält; --shift ist für Fahrtenblätter</translation>
    </message>
    <message>
        <source>is a study, which holds its recordings; --traces is for run sheets</source>
        <translation>ist eine Studie, die ihre Aufzeichnungen enthält; --traces ist für Fahrtenblätter</translation>
    </message>
    <message>
        <source>is a study; --column, --dates and --sheet are for spreadsheets</source>
        <translation>ist eine Studie; --column, --dates und --sheet gelten für Tabellen</translation>
    </message>
    <message>
        <source>is a text, which has no sheets; &apos;{}&apos; cannot be chosen</source>
        <translation>ist ein Text, der keine Blätter hat; „{}“ lässt sich nicht wählen</translation>
    </message>
    <message>
        <source>is an SQLite database, but not a study; expected a file that Bothways made</source>
        <translation>ist eine SQLite-Datenbank, aber keine Studie; erwartet wird eine Datei, die Bothways angelegt hat</translation>
    </message>
    <message>
        <source>is an archive but no workbook; expected .xlsx, .ods, or text with columns</source>
        <translation>ist ein Archiv, aber keine Arbeitsmappe; erwartet wird .xlsx, .ods oder Text mit Spalten</translation>
    </message>
    <message>
        <source>is as far as was read: there are {} faults before it</source>
        <translation>ist die letzte gelesene Stelle: Davor sind {} Fehler</translation>
    </message>
    <message>
        <source>is being read by {}; nothing was changed</source>
        <translation>wird gerade von {} gelesen; nichts wurde geändert</translation>
    </message>
    <message>
        <source>is being written by another program; nothing was changed</source>
        <translation>wird gerade von einem anderen Programm beschrieben; nichts wurde geändert</translation>
    </message>
    <message>
        <source>is being written by {}; close it there, or open it for reading</source>
        <translation>wird gerade von {} beschrieben; schließen Sie die Studie dort, oder öffnen Sie sie nur zum Lesen</translation>
    </message>
    <message>
        <source>is being written by {}; nothing was changed</source>
        <translation>wird gerade von {} beschrieben; nichts wurde geändert</translation>
    </message>
    <message>
        <source>is beyond the header: more than {} fields, expected at most {}</source>
        <translation>liegt jenseits der Kopfzeile: mehr als {} Felder, erwartet werden höchstens {}</translation>
    </message>
    <message>
        <source>is beyond the header: {} fields, expected at most {}</source>
        <translation>liegt jenseits der Kopfzeile: {} Felder, erwartet höchstens {}</translation>
    </message>
    <message>
        <source>is beyond the header: {} fields, expected at most {} (a comma within a field needs quotes around it)</source>
        <translation>liegt jenseits der Kopfzeile: {} Felder, erwartet höchstens {} (ein Komma in einem Feld braucht Anführungszeichen darum)</translation>
    </message>
    <message>
        <source>is damaged (SQLite finds broken pages); restore it from a copy</source>
        <translation>ist beschädigt (SQLite findet zerstörte Seiten); stellen Sie die Datei aus einer Kopie wieder her</translation>
    </message>
    <message>
        <source>is damaged ({}); restore it from a copy</source>
        <translation>ist beschädigt ({}); stellen Sie die Datei aus einer Kopie wieder her</translation>
    </message>
    <message>
        <source>is damaged: it has no format number</source>
        <translation>ist beschädigt: Die Formatnummer fehlt</translation>
    </message>
    <message>
        <source>is damaged: it holds more than a study of its size can; restore it from a copy</source>
        <translation>ist beschädigt: Sie enthält mehr, als eine Studie dieser Größe enthalten kann; stellen Sie die Datei aus einer Kopie wieder her</translation>
    </message>
    <message>
        <source>is damaged: its content is not what Bothways wrote last; restore it from a copy</source>
        <translation>ist beschädigt: Der Inhalt ist nicht der, den Bothways zuletzt geschrieben hat; stellen Sie die Datei aus einer Kopie wieder her</translation>
    </message>
    <message>
        <source>is damaged: its part &apos;{}&apos; cannot be unpacked</source>
        <translation>ist beschädigt: Der Teil „{}“ lässt sich nicht entpacken</translation>
    </message>
    <message>
        <source>is damaged: its part &apos;{}&apos; has {} on line {}</source>
        <translation>ist beschädigt: Der Teil „{}“ hat {} in Zeile {}</translation>
    </message>
    <message>
        <source>is damaged: its tables share pages; restore it from a copy</source>
        <translation>ist beschädigt: Ihre Tabellen teilen sich Seiten; stellen Sie die Datei aus einer Kopie wieder her</translation>
    </message>
    <message>
        <source>is damaged: {} cannot be read; restore it from a copy</source>
        <translation>ist beschädigt: {} lässt sich nicht lesen; stellen Sie die Datei aus einer Kopie wieder her</translation>
    </message>
    <message>
        <source>is damaged: {} is missing in it; restore it from a copy</source>
        <translation>ist beschädigt: {} fehlt darin; stellen Sie die Datei aus einer Kopie wieder her</translation>
    </message>
    <message>
        <source>is damaged: {} is twice in it; restore it from a copy</source>
        <translation>ist beschädigt: {} steht zweimal darin; stellen Sie die Datei aus einer Kopie wieder her</translation>
    </message>
    <message>
        <source>is empty; a counted run needs its consumption</source>
        <translation>ist leer; eine gewertete Fahrt braucht ihren Verbrauch</translation>
    </message>
    <message>
        <source>is empty; a discarded run needs a rule&apos;s name or &apos;other&apos;</source>
        <translation>ist leer; eine verworfene Fahrt braucht den Namen einer Regel oder „other“</translation>
    </message>
    <message>
        <source>is empty; expected a date and time like 2026-05-09T05:40:00 or a time of day like 05:40</source>
        <translation>ist leer; erwartet werden Datum und Uhrzeit wie 2026-05-09T05:40:00 oder eine Uhrzeit wie 05:40</translation>
    </message>
    <message>
        <source>is empty; expected a header line with the names of the columns</source>
        <translation>ist leer; erwartet wird eine Kopfzeile mit den Namen der Spalten</translation>
    </message>
    <message>
        <source>is empty; expected a name</source>
        <translation>ist leer; erwartet wird ein Name</translation>
    </message>
    <message>
        <source>is empty; expected a recording in CSV</source>
        <translation>ist leer; erwartet wird eine Aufzeichnung als CSV</translation>
    </message>
    <message>
        <source>is empty; expected a study</source>
        <translation>ist leer; erwartet wird eine Studie</translation>
    </message>
    <message>
        <source>is empty; the reason &apos;other&apos; needs words</source>
        <translation>ist leer; der Grund „other“ braucht einen Beleg</translation>
    </message>
    <message>
        <source>is empty; {} needs a distance</source>
        <translation>ist leer; {} braucht eine Strecke</translation>
    </message>
    <message>
        <source>is given for a counted run; expected status &apos;discarded&apos;, or none</source>
        <translation>steht bei einer gewerteten Fahrt; erwartet wird der Status „discarded“ oder nichts</translation>
    </message>
    <message>
        <source>is given twice; expected each file once</source>
        <translation>ist zweimal angegeben; erwartet wird jede Datei einmal</translation>
    </message>
    <message>
        <source>is larger than {} MB; expected {}</source>
        <translation>ist größer als {} MB; erwartet wird {}</translation>
    </message>
    <message>
        <source>is missing; expected a column for it, or to be told which it is: --column &apos;HEADER={}&apos;</source>
        <translation>fehlt; erwartet wird eine Spalte dafür, oder die Angabe, welche es ist: --column &apos;ÜBERSCHRIFT={}&apos;</translation>
    </message>
    <message>
        <source>is missing; expected exactly one of l_per_100km, mpg_us, mpg_imp, km_per_l, kwh_per_100km, fuel_l, fuel_gal_us</source>
        <translation>fehlt; erwartet wird genau eine von l_per_100km, mpg_us, mpg_imp, km_per_l, kwh_per_100km, fuel_l, fuel_gal_us</translation>
    </message>
    <message>
        <source>is missing; expected it in the header</source>
        <translation>fehlt; erwartet wird sie in der Kopfzeile</translation>
    </message>
    <message>
        <source>is no header of a run sheet; expected names of columns like configuration, direction, start, l_per_100km</source>
        <translation>ist kein Kopf eines Fahrtenblatts; erwartet werden Spaltennamen wie configuration, direction, start, l_per_100km</translation>
    </message>
    <message>
        <source>is no longer where it was opened (moved or removed meanwhile); nothing was changed</source>
        <translation>ist nicht mehr da, wo sie geöffnet wurde (inzwischen verschoben oder entfernt); nichts wurde geändert</translation>
    </message>
    <message>
        <source>is no run sheet, but a logger&apos;s recording by its look; expected it behind --trace, or to be told what its columns are: --column &apos;HEADER=configuration&apos;</source>
        <translation>ist dem Aussehen nach kein Fahrtenblatt, sondern die Aufzeichnung eines Loggers; erwartet wird sie hinter --trace, oder die Angabe, was ihre Spalten sind: --column &apos;ÜBERSCHRIFT=configuration&apos;</translation>
    </message>
    <message>
        <source>is no study; expected a file that Bothways made</source>
        <translation>ist keine Studie; erwartet wird eine Datei, die Bothways angelegt hat</translation>
    </message>
    <message>
        <source>is no text (it holds zero bytes); expected .xlsx, .ods, or text with columns</source>
        <translation>ist kein Text (es enthält Nullbytes); erwartet wird .xlsx, .ods oder Text mit Spalten</translation>
    </message>
    <message>
        <source>is no text (it holds zero bytes); expected a run sheet in CSV form</source>
        <translation>ist kein Text (die Datei enthält Nullbytes); erwartet wird ein Fahrtenblatt als CSV</translation>
    </message>
    <message>
        <source>is no well-formed GPX: {}</source>
        <translation>ist kein wohlgeformtes GPX: {}</translation>
    </message>
    <message>
        <source>is no workbook that we know: its part &apos;{}&apos; is missing</source>
        <translation>ist keine bekannte Arbeitsmappe: Der Teil „{}“ fehlt</translation>
    </message>
    <message>
        <source>is not UTF-8 text</source>
        <translation>ist kein UTF-8-Text</translation>
    </message>
    <message>
        <source>is not UTF-8 text; expected a run sheet saved as UTF-8</source>
        <translation>ist kein UTF-8-Text; erwartet wird ein als UTF-8 gespeichertes Fahrtenblatt</translation>
    </message>
    <message>
        <source>is not UTF-8 text; expected the sheet to be saved as UTF-8</source>
        <translation>ist kein UTF-8-Text; erwartet wird ein als UTF-8 gespeichertes Blatt</translation>
    </message>
    <message>
        <source>is not a finite number; expected a number above 0</source>
        <translation>ist keine endliche Zahl; erwartet wird eine Zahl über 0</translation>
    </message>
    <message>
        <source>is not a name for a column of one&apos;s own</source>
        <translation>ist kein Name für eine eigene Spalte</translation>
    </message>
    <message>
        <source>is not a study, and only a study can be changed; make one with &apos;bothways new NAME{0}&apos;, then &apos;bothways import NAME{0} {1}&apos;</source>
        <translation>ist keine Studie, und nur eine Studie lässt sich ändern; angelegt wird eine mit „bothways new NAME{0}“, dann „bothways import NAME{0} {1}“</translation>
    </message>
    <message>
        <source>is not a study, and only a study has a history</source>
        <translation>ist keine Studie, und nur eine Studie hat einen Verlauf</translation>
    </message>
    <message>
        <source>is one column of one&apos;s own too many; expected at most {} in a study</source>
        <translation>ist eine eigene Spalte zu viel; erwartet werden höchstens {} in einer Studie</translation>
    </message>
    <message>
        <source>is one column too many; expected at most {}</source>
        <translation>ist eine Spalte zu viel; erwartet werden höchstens {}</translation>
    </message>
    <message>
        <source>is one line too many; expected at most {} lines, and {} runs</source>
        <translation>ist eine Zeile zu viel; erwartet werden höchstens {} Zeilen und {} Fahrten</translation>
    </message>
    <message>
        <source>is one run too many; expected at most {} in a study</source>
        <translation>ist eine Fahrt zu viel; erwartet werden höchstens {} in einer Studie</translation>
    </message>
    <message>
        <source>is open for reading only; nothing can be recorded into it</source>
        <translation>ist nur zum Lesen geöffnet; in sie kann nicht aufgezeichnet werden</translation>
    </message>
    <message>
        <source>is open for reading only; nothing was changed</source>
        <translation>ist nur zum Lesen geöffnet; nichts wurde geändert</translation>
    </message>
    <message>
        <source>is protected by a password; expected a workbook saved without one</source>
        <translation>ist durch ein Passwort geschützt; erwartet wird eine ohne Passwort gespeicherte Arbeitsmappe</translation>
    </message>
    <message>
        <source>is read-only; make it writable, or copy it to another place</source>
        <translation>ist schreibgeschützt; machen Sie die Datei beschreibbar, oder kopieren Sie sie an einen anderen Ort</translation>
    </message>
    <message>
        <source>is read-only; nothing was changed</source>
        <translation>ist schreibgeschützt; nichts wurde geändert</translation>
    </message>
    <message>
        <source>is there twice</source>
        <translation>kommt zweimal vor</translation>
    </message>
    <message>
        <source>is there twice; expected one of each name</source>
        <translation>kommt zweimal vor; erwartet wird jeder Name einmal</translation>
    </message>
    <message>
        <source>is too long; expected at most {} characters</source>
        <translation>ist zu lang; erwartet werden höchstens {} Zeichen</translation>
    </message>
    <message>
        <source>is {}; expected a recording in CSV, plain text in UTF-8</source>
        <translation>ist {}; erwartet wird eine Aufzeichnung als CSV, reiner Text in UTF-8</translation>
    </message>
    <message>
        <source>it belongs to no run yet; cut it into runs with &apos;bothways import STUDY --recording NAME --cut times&apos; (or marks, position, speed), or import it with --run N instead</source>
        <translation>sie gehört noch zu keiner Fahrt; „bothways import STUDIE --recording NAME --cut times“ (oder marks, position, speed) schneidet sie in Fahrten, oder importieren Sie sie stattdessen mit --run N</translation>
    </message>
    <message>
        <source>it claims more rows than its size can hold</source>
        <translation>sie gibt mehr Zeilen an, als ihre Größe fassen kann</translation>
    </message>
    <message>
        <source>it ends, with the number that the display shows, or with that of the recording</source>
        <translation>sie endet, mit der Zahl der Anzeige oder mit der der Aufzeichnung</translation>
    </message>
    <message>
        <source>it has not as many rows as it should</source>
        <translation>sie hat nicht so viele Zeilen, wie sie sollte</translation>
    </message>
    <message>
        <source>it is a directory</source>
        <translation>das ist ein Verzeichnis</translation>
    </message>
    <message>
        <source>it is a link, and what a link leads to is not written over</source>
        <translation>sie ist eine Verknüpfung, und wohin eine Verknüpfung führt, wird nicht überschrieben</translation>
    </message>
    <message>
        <source>it is a study, which is not written over</source>
        <translation>das ist eine Studie, und die wird nicht überschrieben</translation>
    </message>
    <message>
        <source>it is no ordinary file</source>
        <translation>sie ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>it is not a compressed block</source>
        <translation>es ist kein komprimierter Block</translation>
    </message>
    <message>
        <source>it is too short or too long</source>
        <translation>es ist zu kurz oder zu lang</translation>
    </message>
    <message>
        <source>it is what is being read</source>
        <translation>sie ist das, was gerade gelesen wird</translation>
    </message>
    <message>
        <source>it would be taken for a part of the study beside it</source>
        <translation>sie würde für einen Teil der Studie daneben gehalten</translation>
    </message>
    <message>
        <source>its bounds are not those of its values</source>
        <translation>ihre Grenzen sind nicht die ihrer Werte</translation>
    </message>
    <message>
        <source>its checksum or compression is wrong</source>
        <translation>seine Prüfsumme oder Kompression ist falsch</translation>
    </message>
    <message>
        <source>its chunks are not those that Bothways wrote</source>
        <translation>ihre Stücke sind nicht die, die Bothways geschrieben hat</translation>
    </message>
    <message>
        <source>its clock has drifted by {} s</source>
        <translation>seine Uhr ist um {} s abgewichen</translation>
    </message>
    <message>
        <source>its consumption is in kWh, which is no fuel&apos;s; leave --fuel out</source>
        <translation>der Verbrauch ist in kWh, die es bei keinem Kraftstoff gibt; lassen Sie --fuel weg</translation>
    </message>
    <message>
        <source>its consumption is that of a fuel; --fuel electric is for kWh</source>
        <translation>der Verbrauch ist der eines Kraftstoffs; --fuel electric gilt für kWh</translation>
    </message>
    <message>
        <source>its counts contradict each other</source>
        <translation>seine Anzahlen widersprechen sich</translation>
    </message>
    <message>
        <source>its form is unknown</source>
        <translation>seine Form ist unbekannt</translation>
    </message>
    <message>
        <source>its head is unknown</source>
        <translation>sein Kopf ist unbekannt</translation>
    </message>
    <message>
        <source>its header changed to &apos;{}&apos;</source>
        <translation>seine Kopfzeile ist jetzt „{}“</translation>
    </message>
    <message>
        <source>its lines have {} numbers now</source>
        <translation>seine Zeilen haben jetzt {} Zahlen</translation>
    </message>
    <message>
        <source>its name holds a bracket or a line end; expected another name</source>
        <translation>ihr Name enthält eine Klammer oder ein Zeilenende; erwartet wird ein anderer Name</translation>
    </message>
    <message>
        <source>its numbers cannot be</source>
        <translation>ihre Zahlen können nicht sein</translation>
    </message>
    <message>
        <source>its sheet &apos;{}&apos;</source>
        <translation>Blatt „{}“</translation>
    </message>
    <message>
        <source>its size cannot be</source>
        <translation>seine Größe kann nicht sein</translation>
    </message>
    <message>
        <source>its switch-on time is not noted</source>
        <translation>sein Einschaltzeitpunkt ist nicht notiert</translation>
    </message>
    <message>
        <source>its times do not ascend</source>
        <translation>ihre Zeiten steigen nicht an</translation>
    </message>
    <message>
        <source>kWh/100 km</source>
        <translation>kWh/100 km</translation>
    </message>
    <message>
        <source>kept as they are, without a meaning: {}{}</source>
        <translation>unverändert übernommen, ohne Bedeutung: {}{}</translation>
    </message>
    <message>
        <source>kilometres above 0, or miles like &apos;4 mi&apos;</source>
        <translation>Kilometer über 0 oder Meilen wie „4 mi“</translation>
    </message>
    <message>
        <source>km</source>
        <comment>unit</comment>
        <translation>km</translation>
    </message>
    <message>
        <source>km/L</source>
        <translation>km/l</translation>
    </message>
    <message>
        <source>km/h above 0, or mph like &apos;55 mph&apos;</source>
        <translation>km/h über 0 oder mph wie „55 mph“</translation>
    </message>
    <message>
        <source>km/h</source>
        <comment>unit</comment>
        <translation>km/h</translation>
    </message>
    <message>
        <source>labels</source>
        <comment>companion</comment>
        <translation>Vertauschen der Zuordnung</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>geografische Breite</translation>
    </message>
    <message>
        <source>left out, as it holds no number: {}</source>
        <translation>weggelassen, weil keine Zahl darin steht: {}</translation>
    </message>
    <message>
        <source>less</source>
        <comment>verdict</comment>
        <translation>weniger</translation>
    </message>
    <message>
        <source>letters A and B, both of them, like ABA</source>
        <translation>eine Folge aus A und B, mit beiden, wie ABA</translation>
    </message>
    <message>
        <source>lies in a folder that is read-only; copy it to another place</source>
        <translation>liegt in einem schreibgeschützten Ordner; kopieren Sie die Datei an einen anderen Ort</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>line {} as its header, and what stands above it passed over</source>
        <translation>Zeile {} als Kopfzeile; was darüber steht, wurde übergangen</translation>
    </message>
    <message>
        <source>line {} as units</source>
        <translation>Zeile {} als Einheiten</translation>
    </message>
    <message>
        <source>line {} of the history</source>
        <translation>Zeile {} des Verlaufs</translation>
    </message>
    <message>
        <source>line {} of the walk-round asks for no number</source>
        <translation>Zeile {} des Rundgangs fragt nach keiner Zahl</translation>
    </message>
    <message>
        <source>lines of {} numbers under a header of {} names</source>
        <translation>Zeilen mit {} Zahlen unter einer Kopfzeile mit {} Namen</translation>
    </message>
    <message>
        <source>lines passed over as remarks: {}</source>
        <translation>Bemerkungen, die übergangen wurden (Zeile {})</translation>
    </message>
    <message>
        <source>lines passed over as totals: {}</source>
        <translation>Summen, die übergangen wurden (Zeile {})</translation>
    </message>
    <message>
        <source>load lost</source>
        <translation>Last verloren</translation>
    </message>
    <message>
        <source>local time taken to be UTC{}</source>
        <translation>Ortszeit angenommen als UTC{}</translation>
    </message>
    <message>
        <source>logs out-and-back fuel-economy runs and says whether there is an effect</source>
        <translation>hält Verbrauchsfahrten hin und zurück fest und sagt, ob es einen Effekt gibt</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>geografische Länge</translation>
    </message>
    <message>
        <source>looked at before</source>
        <translation>schon angesehen</translation>
    </message>
    <message>
        <source>looks like {}; expected a run sheet in CSV form</source>
        <translation>sieht nach {} aus; erwartet wird ein Fahrtenblatt als CSV</translation>
    </message>
    <message>
        <source>low / middle / high</source>
        <translation>niedrig / mittel / hoch</translation>
    </message>
    <message>
        <source>m = μ + δ·x + β·(t − t&lt;sub&gt;mean&lt;/sub&gt;) + ε, df = n − 3</source>
        <translation>m = μ + δ·x + β·(t − t&lt;sub&gt;Mittel&lt;/sub&gt;) + ε, FG = n − 3</translation>
    </message>
    <message>
        <source>m/s</source>
        <comment>unit</comment>
        <translation>m/s</translation>
    </message>
    <message>
        <source>made by Bothways {}</source>
        <translation>angelegt von Bothways {}</translation>
    </message>
    <message>
        <source>made {}</source>
        <translation>{} angelegt</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>Relevanzschwelle</translation>
    </message>
    <message>
        <source>marginal engine efficiency</source>
        <translation>Grenzwirkungsgrad des Motors</translation>
    </message>
    <message>
        <source>marked: {}</source>
        <translation>vermerkt: {}</translation>
    </message>
    <message>
        <source>marks</source>
        <comment>column</comment>
        <translation>Marken</translation>
    </message>
    <message>
        <source>mean of their effects</source>
        <translation>Mittel ihrer Effekte</translation>
    </message>
    <message>
        <source>mean output, W</source>
        <translation>mittlere Leistung, W</translation>
    </message>
    <message>
        <source>mean road speed {} % above the target{}</source>
        <translation>die mittlere Geschwindigkeit lag {} % über dem Ziel{}</translation>
    </message>
    <message>
        <source>mean road speed {} % below the target{}</source>
        <translation>die mittlere Geschwindigkeit lag {} % unter dem Ziel{}</translation>
    </message>
    <message>
        <source>mean rotor speed, {}</source>
        <translation>mittlere Rotordrehzahl, {}</translation>
    </message>
    <message>
        <source>mi</source>
        <comment>unit</comment>
        <translation>mi</translation>
    </message>
    <message>
        <source>minutes above 0</source>
        <translation>Minuten über 0</translation>
    </message>
    <message>
        <source>minutes, 0 or more</source>
        <translation>Minuten, 0 oder mehr</translation>
    </message>
    <message>
        <source>modbus, obd: seconds from one round to the next (default: 0.25)</source>
        <translation>modbus, obd: Sekunden von einer Runde zur nächsten (Vorgabe: 0.25)</translation>
    </message>
    <message>
        <source>modbus: the device&apos;s number (default: 1)</source>
        <translation>modbus: die Nummer des Geräts (Vorgabe: 1)</translation>
    </message>
    <message>
        <source>more than {} columns; expected {} at most</source>
        <translation>mehr als {} Spalten; erwartet werden höchstens {}</translation>
    </message>
    <message>
        <source>more</source>
        <comment>verdict</comment>
        <translation>mehr</translation>
    </message>
    <message>
        <source>mpg (US)</source>
        <translation>mpg (US)</translation>
    </message>
    <message>
        <source>mpg (imperial)</source>
        <translation>mpg (imp.)</translation>
    </message>
    <message>
        <source>mph</source>
        <comment>unit</comment>
        <translation>mph</translation>
    </message>
    <message>
        <source>name of the run&apos;s recording, beside the sheet</source>
        <translation>Name der Aufzeichnung der Fahrt, die neben dem Blatt liegt</translation>
    </message>
    <message>
        <source>needs a distance; expected a column distance_km or distance_mi</source>
        <translation>braucht eine Strecke; erwartet wird eine Spalte distance_km oder distance_mi</translation>
    </message>
    <message>
        <source>needs independent pairs</source>
        <translation>setzt unabhängige Paare voraus</translation>
    </message>
    <message>
        <source>net</source>
        <translation>Saldo</translation>
    </message>
    <message>
        <source>net, per cent</source>
        <translation>Saldo, Prozent</translation>
    </message>
    <message>
        <source>new run</source>
        <translation>neue Fahrt</translation>
    </message>
    <message>
        <source>new run {}</source>
        <translation>neue Fahrt {}</translation>
    </message>
    <message>
        <source>next: run {}, {}, {}</source>
        <translation>als Nächstes: Fahrt {}, {}, {}</translation>
    </message>
    <message>
        <source>no RMC or GGA sentence with a time and a position; expected what a receiver with a fix sends</source>
        <translation>kein RMC- oder GGA-Satz mit Zeit und Position; erwartet wird, was ein Empfänger mit Ortung sendet</translation>
    </message>
    <message>
        <source>no channel beside the time; expected one at least</source>
        <translation>kein Kanal neben der Zeit; erwartet wird mindestens einer</translation>
    </message>
    <message>
        <source>no channel with a number in it; expected one at least</source>
        <translation>kein Kanal mit einer Zahl darin; erwartet wird mindestens einer</translation>
    </message>
    <message>
        <source>no column of time among {}; expected &apos;time_s&apos; (seconds) or &apos;time&apos; (date and time), or a mapping that names it</source>
        <translation>keine Zeitspalte unter {}; erwartet wird „time_s“ (Sekunden) oder „time“ (Datum und Uhrzeit) oder eine Zuordnung, die sie nennt</translation>
    </message>
    <message>
        <source>no comparison</source>
        <translation>kein Vergleich</translation>
    </message>
    <message>
        <source>no difference as large as the margin</source>
        <translation>kein relevanter Unterschied</translation>
    </message>
    <message>
        <source>no element</source>
        <translation>kein Element</translation>
    </message>
    <message>
        <source>no fuel rate: a diesel burns with air left over, and this car does not say how much</source>
        <translation>kein Kraftstoffstrom: Ein Diesel verbrennt mit Luftüberschuss, und dieses Auto sagt nicht, mit wie viel</translation>
    </message>
    <message>
        <source>no header line with a column of time; expected names like &apos;time_s&apos; (seconds) or &apos;time&apos; (date and time), and channels</source>
        <translation>keine Kopfzeile mit einer Zeitspalte; erwartet werden Namen wie „time_s“ (Sekunden) oder „time“ (Datum und Uhrzeit) und Kanäle</translation>
    </message>
    <message>
        <source>no limit is set</source>
        <translation>keine Grenze gesetzt</translation>
    </message>
    <message>
        <source>no outlying pair</source>
        <translation>kein Ausreißer</translation>
    </message>
    <message>
        <source>no permission to read {}</source>
        <translation>keine Berechtigung, {} zu lesen</translation>
    </message>
    <message>
        <source>no permission to read {}: it belongs to the group {}. Join it with: sudo usermod -aG {} $USER, then log in again</source>
        <translation>keine Berechtigung, {} zu lesen: gehört der Gruppe {}. Beitreten mit: sudo usermod -aG {} $USER, dann neu anmelden</translation>
    </message>
    <message>
        <source>no row with a time; expected a recording</source>
        <translation>keine Zeile mit einer Zeit; erwartet wird eine Aufzeichnung</translation>
    </message>
    <message>
        <source>no rule</source>
        <translation>keiner Regel</translation>
    </message>
    <message>
        <source>no run is under way; start one first</source>
        <translation>es läuft keine Fahrt; beginnen Sie zuerst eine</translation>
    </message>
    <message>
        <source>no run was named; expected numbers of runs before COLUMN=VALUE</source>
        <translation>es wurde keine Fahrt genannt; erwartet werden Nummern von Fahrten vor SPALTE=WERT</translation>
    </message>
    <message>
        <source>no samples of {}{}</source>
        <translation>keine Messwerte{1}: {0}</translation>
    </message>
    <message>
        <source>no sentence with a right checksum; expected NMEA 0183</source>
        <translation>kein Satz mit richtiger Prüfsumme; erwartet wird NMEA 0183</translation>
    </message>
    <message>
        <source>no speed was held for a minute</source>
        <translation>keine Geschwindigkeit wurde eine Minute lang gehalten</translation>
    </message>
    <message>
        <source>no time that can be read in &apos;{}&apos; and {} other rows, more than half of all; expected a column of time</source>
        <translation>keine lesbare Zeit in „{}“ und {} anderen Zeilen, mehr als der Hälfte; erwartet wird eine Zeitspalte</translation>
    </message>
    <message>
        <source>no track point; expected a recorded track</source>
        <translation>kein Wegpunkt; erwartet wird ein aufgezeichneter Weg</translation>
    </message>
    <message>
        <source>no true reading{}, for {} s</source>
        <translation>kein glaubhafter Messwert{}, {} s lang</translation>
    </message>
    <message>
        <source>no verb was given; expected one of {}</source>
        <translation>es wurde kein Befehl angegeben; erwartet wird einer von {}</translation>
    </message>
    <message>
        <source>no verdict</source>
        <translation>kein Urteil</translation>
    </message>
    <message>
        <source>no verdict with it</source>
        <translation>kein Urteil mit ihr</translation>
    </message>
    <message>
        <source>nobody answers</source>
        <translation>niemand antwortet</translation>
    </message>
    <message>
        <source>noise of earlier days</source>
        <translation>Rauschen früherer Tage</translation>
    </message>
    <message>
        <source>none moves it down</source>
        <translation>keine verschiebt ihn nach unten</translation>
    </message>
    <message>
        <source>none moves it up</source>
        <translation>keine verschiebt den Effekt nach oben</translation>
    </message>
    <message>
        <source>none noted</source>
        <translation>keine notiert</translation>
    </message>
    <message>
        <source>none of the files has a column &apos;{}&apos;; expected a name of a header</source>
        <translation>keine der Dateien hat eine Spalte „{}“; erwartet wird ein Name aus einer Kopfzeile</translation>
    </message>
    <message>
        <source>none</source>
        <comment>verdict</comment>
        <translation>kein Urteil</translation>
    </message>
    <message>
        <source>normal</source>
        <comment>a check</comment>
        <translation>Verteilung</translation>
    </message>
    <message>
        <source>not checked until set</source>
        <translation>nicht geprüft, bis gesetzt</translation>
    </message>
    <message>
        <source>not computed</source>
        <comment>a check</comment>
        <translation>nicht berechnet</translation>
    </message>
    <message>
        <source>not from these runs</source>
        <translation>nicht aus diesen Fahrten</translation>
    </message>
    <message>
        <source>not met</source>
        <comment>a check</comment>
        <translation>verletzt</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>not open</source>
        <comment>of an instrument</comment>
        <translation>nicht offen</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>nicht aufgezeichnet</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>nicht gesetzt</translation>
    </message>
    <message>
        <source>not stopped: it ends with the last second that was kept</source>
        <translation>nicht beendet: sie endet mit der letzten Sekunde, die gespeichert war</translation>
    </message>
    <message>
        <source>not text</source>
        <translation>kein Text</translation>
    </message>
    <message>
        <source>not ticked: {}</source>
        <translation>nicht abgehakt: {}</translation>
    </message>
    <message>
        <source>not yet cruising</source>
        <translation>noch nicht auf Tempo</translation>
    </message>
    <message>
        <source>note the weather: weather temperature_c=14 wind_ms=2</source>
        <translation>das Wetter notieren: weather temperature_c=14 wind_ms=2</translation>
    </message>
    <message>
        <source>note</source>
        <comment>a check</comment>
        <translation>auffällig</translation>
    </message>
    <message>
        <source>note</source>
        <comment>grade of a finding</comment>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>note</source>
        <comment>level of an alarm</comment>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>notes</source>
        <comment>column</comment>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>nothing came yet</source>
        <comment>of an instrument</comment>
        <translation>noch nichts gekommen</translation>
    </message>
    <message>
        <source>nothing comes</source>
        <translation>es kommt nichts</translation>
    </message>
    <message>
        <source>nothing is added to {}; a recording that is whole is read with replay:{}</source>
        <translation>zu {} kommt nichts hinzu; eine fertige Aufzeichnung wird mit replay:{} gelesen</translation>
    </message>
    <message>
        <source>nothing is known that spoils the run; expected a reason</source>
        <translation>nichts ist bekannt, was die Fahrt verdirbt; erwartet wird ein Grund</translation>
    </message>
    <message>
        <source>nothing is written to {}</source>
        <translation>niemand schreibt in {}</translation>
    </message>
    <message>
        <source>nothing to change was named; expected COLUMN=VALUE after the runs</source>
        <translation>es wurde nichts zum Ändern genannt; erwartet wird SPALTE=WERT nach den Fahrten</translation>
    </message>
    <message>
        <source>nothing to discard</source>
        <translation>nichts zu verwerfen</translation>
    </message>
    <message>
        <source>nothing was recorded: no instrument said anything</source>
        <translation>nichts wurde aufgezeichnet: kein Instrument hat etwas gesagt</translation>
    </message>
    <message>
        <source>nothing was recorded: {}: {}</source>
        <translation>nichts wurde aufgezeichnet: {}: {}</translation>
    </message>
    <message>
        <source>nothing</source>
        <comment>left out by screening</comment>
        <translation>nichts</translation>
    </message>
    <message>
        <source>nothing</source>
        <comment>of a channel</comment>
        <translation>nichts</translation>
    </message>
    <message>
        <source>obd: petrol, e10 or diesel, for fuel from air mass where the car gives no fuel rate</source>
        <translation>obd: petrol, e10 oder diesel, für Kraftstoff aus der Luftmasse, wo das Auto keinen Kraftstoffstrom gibt</translation>
    </message>
    <message>
        <source>of a discarded run: a rule&apos;s name, or other</source>
        <translation>bei einer verworfenen Fahrt: der Name einer Regel oder other</translation>
    </message>
    <message>
        <source>of a discarded run: words</source>
        <translation>bei einer verworfenen Fahrt: Worte</translation>
    </message>
    <message>
        <source>of an unknown kind</source>
        <translation>unbekannter Art</translation>
    </message>
    <message>
        <source>of no run</source>
        <translation>von keiner Fahrt</translation>
    </message>
    <message>
        <source>off</source>
        <comment>blind screening</comment>
        <translation>aus</translation>
    </message>
    <message>
        <source>on</source>
        <comment>blind screening</comment>
        <translation>ein</translation>
    </message>
    <message>
        <source>one effect for all</source>
        <translation>ein Effekt für alle</translation>
    </message>
    <message>
        <source>one number cannot be given to several runs</source>
        <translation>eine Nummer kann nicht mehrere Fahrten bekommen</translation>
    </message>
    <message>
        <source>one pair scatters by</source>
        <translation>ein Paar streut um</translation>
    </message>
    <message>
        <source>one part is no run of the study; expected --configuration NAME to add what is new</source>
        <translation>ein Teil ist keine Fahrt der Studie; erwartet wird --configuration NAME, um Neues hinzuzufügen</translation>
    </message>
    <message>
        <source>one switch only</source>
        <translation>nur ein Wechsel</translation>
    </message>
    <message>
        <source>open design</source>
        <translation>offener Versuchsplan</translation>
    </message>
    <message>
        <source>opening</source>
        <comment>of an instrument</comment>
        <translation>wird geöffnet</translation>
    </message>
    <message>
        <source>or with a study:</source>
        <translation>oder mit einer Studie:</translation>
    </message>
    <message>
        <source>order</source>
        <comment>a check</comment>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>ordinary scatter</source>
        <translation>gewöhnliche Streuung</translation>
    </message>
    <message>
        <source>other reason</source>
        <translation>anderer Grund</translation>
    </message>
    <message>
        <source>other</source>
        <comment>reason</comment>
        <translation>anderer Grund</translation>
    </message>
    <message>
        <source>out</source>
        <comment>a direction</comment>
        <translation>hin</translation>
    </message>
    <message>
        <source>out</source>
        <comment>direction</comment>
        <translation>hin</translation>
    </message>
    <message>
        <source>outlier</source>
        <comment>a check</comment>
        <translation>Einzelpaar</translation>
    </message>
    <message>
        <source>output</source>
        <translation>Abgabeleistung</translation>
    </message>
    <message>
        <source>output dropped</source>
        <translation>Leistung abgefallen</translation>
    </message>
    <message>
        <source>output fell by {} %{} and stayed there</source>
        <translation>die Abgabeleistung fiel{1} um {0} % und blieb dort</translation>
    </message>
    <message>
        <source>output in watts</source>
        <translation>Abgabeleistung in Watt</translation>
    </message>
    <message>
        <source>output {} W</source>
        <translation>Abgabeleistung {} W</translation>
    </message>
    <message>
        <source>output</source>
        <comment>column</comment>
        <translation>Abgabeleistung</translation>
    </message>
    <message>
        <source>over-speed</source>
        <translation>Überdrehzahl</translation>
    </message>
    <message>
        <source>overruling a finding needs words</source>
        <translation>einen Befund zurückzuweisen braucht eine Begründung</translation>
    </message>
    <message>
        <source>overruling a finding needs words: --reason &apos;why it does not matter&apos;</source>
        <translation>einen Befund zurückzuweisen braucht Worte: --reason „warum er nicht zählt“</translation>
    </message>
    <message>
        <source>p &lt; {}</source>
        <translation>p &lt; {}</translation>
    </message>
    <message>
        <source>p = {}</source>
        <translation>p = {}</translation>
    </message>
    <message>
        <source>pair</source>
        <translation>Paar</translation>
    </message>
    <message>
        <source>pair left out</source>
        <translation>weggelassenes Paar</translation>
    </message>
    <message>
        <source>pair {}: runs {} and {}, {}</source>
        <translation>Paar {}: Fahrten {} und {}, {}</translation>
    </message>
    <message>
        <source>pair</source>
        <comment>column</comment>
        <translation>Paar</translation>
    </message>
    <message>
        <source>pairs</source>
        <translation>Paare</translation>
    </message>
    <message>
        <source>pairs alike</source>
        <translation>ähnliche Paare</translation>
    </message>
    <message>
        <source>pairs are tied with &apos;bothways pair&apos; and untied with &apos;bothways unpair&apos;</source>
        <translation>Paare werden mit „bothways pair“ verbunden und mit „bothways unpair“ gelöst</translation>
    </message>
    <message>
        <source>pairs in order of time, days side by side</source>
        <translation>Paare in zeitlicher Folge, Tage nebeneinander</translation>
    </message>
    <message>
        <source>part {}</source>
        <translation>Teil {}</translation>
    </message>
    <message>
        <source>part</source>
        <comment>of the device</comment>
        <translation>Teil</translation>
    </message>
    <message>
        <source>parted by commas</source>
        <translation>durch Komma getrennt</translation>
    </message>
    <message>
        <source>parted by semicolons</source>
        <translation>durch Semikolon getrennt</translation>
    </message>
    <message>
        <source>parted by tabs</source>
        <translation>durch Tabulator getrennt</translation>
    </message>
    <message>
        <source>passing traffic</source>
        <translation>Verkehr</translation>
    </message>
    <message>
        <source>passing traffic noted{}{}</source>
        <translation>vorbeifahrender Verkehr wurde notiert{}{}</translation>
    </message>
    <message>
        <source>petrol, e10, diesel or electric</source>
        <translation>petrol, e10, diesel oder electric</translation>
    </message>
    <message>
        <source>petrol, e10, diesel or electric (default: that of the study, else petrol)</source>
        <translation>petrol, e10, diesel oder electric (Vorgabe: der der Studie, sonst petrol)</translation>
    </message>
    <message>
        <source>planned late</source>
        <translation>spät geplant</translation>
    </message>
    <message>
        <source>plus or minus {}</source>
        <translation>plus oder minus {}</translation>
    </message>
    <message>
        <source>pooled from</source>
        <translation>zusammengefasst aus</translation>
    </message>
    <message>
        <source>port</source>
        <comment>of a computer</comment>
        <translation>Schnittstelle</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>pressure</source>
        <comment>column</comment>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>put back</source>
        <translation>wieder gewertet</translation>
    </message>
    <message>
        <source>rate</source>
        <comment>of readings</comment>
        <translation>Rate</translation>
    </message>
    <message>
        <source>read by</source>
        <comment>of a channel: the rules</comment>
        <translation>gelesen von</translation>
    </message>
    <message>
        <source>reading</source>
        <comment>of an instrument</comment>
        <translation>liest</translation>
    </message>
    <message>
        <source>reason</source>
        <comment>column</comment>
        <translation>Grund</translation>
    </message>
    <message>
        <source>reason, evidence, notes</source>
        <translation>Grund, Beleg, Notizen</translation>
    </message>
    <message>
        <source>recorded live with the rig {}: nothing was lost</source>
        <translation>live aufgezeichnet mit dem Satz {}: nichts ging verloren</translation>
    </message>
    <message>
        <source>recorded live with the rig {}: {}</source>
        <translation>live aufgezeichnet mit dem Satz {}: {}</translation>
    </message>
    <message>
        <source>recorded too slowly</source>
        <translation>zu langsam aufgezeichnet</translation>
    </message>
    <message>
        <source>recorded {} samples in {} min as &apos;{}&apos;; runs: {}</source>
        <translation>{} Messwerte in {} min aufgezeichnet als „{}“; Fahrten: {}</translation>
    </message>
    <message>
        <source>recording &apos;{}&apos;; &apos;help&apos; says what can be typed</source>
        <translation>Aufzeichnung „{}“ läuft; „help“ sagt, was sich tippen lässt</translation>
    </message>
    <message>
        <source>recording ends early</source>
        <translation>Aufzeichnung endet zu früh</translation>
    </message>
    <message>
        <source>recording {} has no channel &apos;{}&apos;</source>
        <translation>Aufzeichnung {} hat keinen Kanal „{}“</translation>
    </message>
    <message>
        <source>recording</source>
        <comment>column</comment>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>relief of the 12 V supply</source>
        <translation>Entlastung des 12-V-Netzes</translation>
    </message>
    <message>
        <source>relief of the alternator</source>
        <translation>Entlastung der Lichtmaschine</translation>
    </message>
    <message>
        <source>relief or cost: an accessory has one of them</source>
        <translation>relief (Entlastung) oder cost (Aufwand): ein Zubehör hat nur eines davon</translation>
    </message>
    <message>
        <source>renamed configuration {} to {}</source>
        <translation>Konfiguration {} heißt jetzt {}</translation>
    </message>
    <message>
        <source>renamed direction {} to {}</source>
        <translation>Richtung {} heißt jetzt {}</translation>
    </message>
    <message>
        <source>replays of one rig need one speed, or they come apart</source>
        <translation>Wiedergaben einer Messausrüstung brauchen dieselbe Geschwindigkeit, sonst laufen sie auseinander</translation>
    </message>
    <message>
        <source>residual</source>
        <translation>Residuum</translation>
    </message>
    <message>
        <source>resolution</source>
        <comment>a check</comment>
        <translation>Auflösung</translation>
    </message>
    <message>
        <source>return</source>
        <comment>a direction</comment>
        <translation>zurück</translation>
    </message>
    <message>
        <source>return</source>
        <comment>direction</comment>
        <translation>zurück</translation>
    </message>
    <message>
        <source>road speed off target</source>
        <translation>Zielgeschwindigkeit verfehlt</translation>
    </message>
    <message>
        <source>road speed {} % above the target{}</source>
        <translation>die Geschwindigkeit lag {} % über dem Ziel{}</translation>
    </message>
    <message>
        <source>road speed {} % below the target{}</source>
        <translation>die Geschwindigkeit lag {} % unter dem Ziel{}</translation>
    </message>
    <message>
        <source>road speed {} km/h</source>
        <translation>Fahrgeschwindigkeit {} km/h</translation>
    </message>
    <message>
        <source>road speed</source>
        <comment>a channel</comment>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>rotor at {} rpm{}</source>
        <translation>der Rotor erreichte {} U/min{}</translation>
    </message>
    <message>
        <source>rotor speed</source>
        <translation>Rotordrehzahl</translation>
    </message>
    <message>
        <source>rpm</source>
        <translation>U/min</translation>
    </message>
    <message>
        <source>run</source>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>run interrupted</source>
        <translation>Fahrt unterbrochen</translation>
    </message>
    <message>
        <source>run {}</source>
        <translation>Fahrt {}</translation>
    </message>
    <message>
        <source>run {} ({})</source>
        <translation>Fahrt {} ({})</translation>
    </message>
    <message>
        <source>run {} counts already</source>
        <translation>Fahrt {} zählt schon</translation>
    </message>
    <message>
        <source>run {} has its consumption; no run is under way</source>
        <translation>Fahrt {} hat ihren Verbrauch; es läuft keine Fahrt</translation>
    </message>
    <message>
        <source>run {} has no consumption and cannot be counted</source>
        <translation>Fahrt {} hat keinen Verbrauch und kann nicht gewertet werden</translation>
    </message>
    <message>
        <source>run {} has no finding &apos;{}&apos;; &apos;bothways screen&apos; lists the findings</source>
        <translation>Fahrt {} hat keinen Befund „{}“; „bothways screen“ listet die Befunde auf</translation>
    </message>
    <message>
        <source>run {} is discarded: {}</source>
        <translation>Fahrt {} ist verworfen: {}</translation>
    </message>
    <message>
        <source>run {} is given two parts; expected one</source>
        <translation>Fahrt {} bekommt zwei Teile; erwartet wird einer</translation>
    </message>
    <message>
        <source>run {} is not tied by hand</source>
        <translation>Fahrt {} ist nicht von Hand verbunden</translation>
    </message>
    <message>
        <source>run {} is tied already; untie it first</source>
        <translation>Fahrt {} ist schon verbunden; lösen Sie sie zuerst</translation>
    </message>
    <message>
        <source>run {} starts at {}, the recording lasts from {} to {}</source>
        <translation>Fahrt {} beginnt um {}, die Aufzeichnung dauert von {} bis {}</translation>
    </message>
    <message>
        <source>run {} starts at {}, the recording lasts from {} to {}; it would fit if the recorder&apos;s clock were {} fast</source>
        <translation>Fahrt {} beginnt um {}, die Aufzeichnung dauert von {} bis {}; es würde passen, wenn die Uhr des Loggers {} vorginge</translation>
    </message>
    <message>
        <source>run {} starts at {}, the recording lasts from {} to {}; it would fit if the recorder&apos;s clock were {} slow</source>
        <translation>Fahrt {} beginnt um {}, die Aufzeichnung dauert von {} bis {}; es würde passen, wenn die Uhr des Loggers {} nachginge</translation>
    </message>
    <message>
        <source>run {} starts while run {} was still being driven; one vehicle drives one run at a time: are start and duration right?</source>
        <translation>Fahrt {} beginnt, während Fahrt {} noch gefahren wurde; ein Fahrzeug fährt immer nur eine Fahrt: Stimmen Start und Dauer?</translation>
    </message>
    <message>
        <source>run {} took {} times the energy that is usual in this study ({} against {} {}): is the unit right, or was a decimal sign lost?</source>
        <translation>Fahrt {} brauchte das {}-Fache der in dieser Studie üblichen Energie ({} gegen {} {}): Stimmt die Einheit, oder ging ein Dezimalzeichen verloren?</translation>
    </message>
    <message>
        <source>run {} took {} times the fuel that is usual in this study ({} against {} {}): is the unit right, or was a decimal sign lost?</source>
        <translation>Fahrt {} brauchte das {}-Fache des in dieser Studie üblichen Kraftstoffs ({} gegen {} {}): Stimmt die Einheit, oder ging ein Dezimalzeichen verloren?</translation>
    </message>
    <message>
        <source>run {}, discarded: {}</source>
        <translation>Fahrt {}, verworfen: {}</translation>
    </message>
    <message>
        <source>run {}:</source>
        <translation>Fahrt {}:</translation>
    </message>
    <message>
        <source>run {}: no part</source>
        <translation>Fahrt {}: kein Teil</translation>
    </message>
    <message>
        <source>run {}: {}</source>
        <translation>Fahrt {}: {}</translation>
    </message>
    <message>
        <source>run {}: {} from {} s</source>
        <translation>Fahrt {}: {} ab {} s</translation>
    </message>
    <message>
        <source>run {}: {} not checked: {}</source>
        <translation>Fahrt {}: {} – nicht geprüft: {}</translation>
    </message>
    <message>
        <source>run {}: {} {} {}</source>
        <translation>Fahrt {}: {} {} {}</translation>
    </message>
    <message>
        <source>run {}: {} {} {}, {} {}</source>
        <translation>Fahrt {}: {} {} {}, {} {}</translation>
    </message>
    <message>
        <source>run {}: {}, {}</source>
        <translation>Fahrt {}: {}, {}</translation>
    </message>
    <message>
        <source>run {}: {}, {}, begins</source>
        <translation>Fahrt {}: {}, {}, beginnt</translation>
    </message>
    <message>
        <source>run {}: {}, {}, {} s, {} {}</source>
        <translation>Fahrt {}: {}, {}, {} s, {} {}</translation>
    </message>
    <message>
        <source>run {}: {}, {}, {} s; its consumption is that of the recording</source>
        <translation>Fahrt {}: {}, {}, {} s; ihr Verbrauch ist der der Aufzeichnung</translation>
    </message>
    <message>
        <source>run</source>
        <comment>column</comment>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>Fahrten</translation>
    </message>
    <message>
        <source>runs begin and end {}</source>
        <translation>Fahrten beginnen und enden {}</translation>
    </message>
    <message>
        <source>runs do not begin by &apos;{}&apos;; expected hand, marks, position or speed</source>
        <translation>Fahrten beginnen nicht durch &apos;{}&apos;; erwartet wird hand, marks, position oder speed</translation>
    </message>
    <message>
        <source>runs that begin by position need the gates at the two ends of the stretch</source>
        <translation>Fahrten, die nach der Position beginnen, brauchen die Tore an den beiden Enden der Strecke</translation>
    </message>
    <message>
        <source>runs that begin by speed need the study&apos;s target; expected road_speed.target_kmh</source>
        <translation>Fahrten, die nach der Geschwindigkeit beginnen, brauchen das Ziel der Studie; erwartet wird road_speed.target_kmh</translation>
    </message>
    <message>
        <source>runs {}</source>
        <translation>Fahrten {}</translation>
    </message>
    <message>
        <source>runs {} and {} are of two blocks; expected two of one block, without a switch or a new day between them</source>
        <translation>die Fahrten {} und {} sind aus zwei Blöcken; erwartet werden zwei aus einem Block, ohne Wechsel und ohne neuen Tag dazwischen</translation>
    </message>
    <message>
        <source>runs {} and {} were both driven &apos;{}&apos;; expected an out and a return run</source>
        <translation>die Fahrten {} und {} gingen beide in Richtung „{}“; erwartet werden eine Hinfahrt und eine Rückfahrt</translation>
    </message>
    <message>
        <source>runs {} count already</source>
        <translation>Fahrten {} zählen schon</translation>
    </message>
    <message>
        <source>runs {} have no finding &apos;{}&apos;; &apos;bothways screen&apos; lists the findings</source>
        <translation>die Fahrten {} haben keinen Befund „{}“; „bothways screen“ listet die Befunde auf</translation>
    </message>
    <message>
        <source>runs {}: no part</source>
        <translation>Fahrten {}: kein Teil</translation>
    </message>
    <message>
        <source>runs</source>
        <comment>companion</comment>
        <translation>Einzelfahrten</translation>
    </message>
    <message>
        <source>s</source>
        <comment>unit</comment>
        <translation>s</translation>
    </message>
    <message>
        <source>same air</source>
        <translation>gleiche Luft</translation>
    </message>
    <message>
        <source>same both ways</source>
        <translation>gleich in beiden Richtungen</translation>
    </message>
    <message>
        <source>same run twice</source>
        <translation>Fahrt doppelt</translation>
    </message>
    <message>
        <source>same start, direction and consumption as run {}: typed twice?</source>
        <translation>Start, Richtung und Verbrauch wie bei Fahrt {}: doppelt eingegeben?</translation>
    </message>
    <message>
        <source>says the same as &apos;{}&apos;; expected one of the two</source>
        <translation>sagt dasselbe wie „{}“; erwartet wird eine von beiden</translation>
    </message>
    <message>
        <source>says this</source>
        <translation>sagt dies</translation>
    </message>
    <message>
        <source>says what is driven next</source>
        <translation>sagt, was als Nächstes gefahren wird</translation>
    </message>
    <message>
        <source>says</source>
        <comment>verdict</comment>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>screening {} %</source>
        <translation>Sichtung {} %</translation>
    </message>
    <message>
        <source>seconds and a word, between semicolons</source>
        <translation>Sekunden und ein Wort, zwischen Semikolons</translation>
    </message>
    <message>
        <source>seconds from the run&apos;s start</source>
        <translation>Sekunden ab dem Start der Fahrt</translation>
    </message>
    <message>
        <source>seed of random deals</source>
        <translation>Startwert der zufälligen Verteilungen</translation>
    </message>
    <message>
        <source>semicolons</source>
        <translation>Semikolons</translation>
    </message>
    <message>
        <source>sensitive</source>
        <translation>empfindlich</translation>
    </message>
    <message>
        <source>sensor lost</source>
        <translation>Sensor ausgefallen</translation>
    </message>
    <message>
        <source>sequence</source>
        <translation>Folge</translation>
    </message>
    <message>
        <source>serial:PORT,BAUD or tcp:HOST:PORT</source>
        <translation>serial:PORT,BAUD oder tcp:HOST:PORT</translation>
    </message>
    <message>
        <source>set for this study</source>
        <translation>für diese Studie gesetzt</translation>
    </message>
    <message>
        <source>set {}</source>
        <translation>gesetzt: {}</translation>
    </message>
    <message>
        <source>setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>setting as set</source>
        <translation>Einstellung, Sollwert</translation>
    </message>
    <message>
        <source>setting changed</source>
        <translation>Einstellung geändert</translation>
    </message>
    <message>
        <source>setting not as set</source>
        <translation>Einstellung weicht ab</translation>
    </message>
    <message>
        <source>setting {}</source>
        <translation>Einstellung {}</translation>
    </message>
    <message>
        <source>setting {} ({} pairs)</source>
        <translation>Einstellung {} ({} Paare)</translation>
    </message>
    <message>
        <source>setting</source>
        <comment>column</comment>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>setting</source>
        <comment>of a study</comment>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>settling</source>
        <comment>a check</comment>
        <translation>warm nach jedem Halt</translation>
    </message>
    <message>
        <source>signs between thousands: &apos;{}&apos; is {}</source>
        <translation>Tausendertrennzeichen („{}“ ist {})</translation>
    </message>
    <message>
        <source>signs where XML has none, or bytes that are no text</source>
        <translation>Zeichen, wo XML keine hat, oder Bytes, die kein Text sind</translation>
    </message>
    <message>
        <source>silent for {}</source>
        <comment>of an instrument</comment>
        <translation>schweigt seit {}</translation>
    </message>
    <message>
        <source>silent</source>
        <comment>of an instrument</comment>
        <translation>schweigt</translation>
    </message>
    <message>
        <source>single runs</source>
        <translation>Einzelfahrten</translation>
    </message>
    <message>
        <source>smaller than the margin</source>
        <translation>unter der Relevanzschwelle</translation>
    </message>
    <message>
        <source>something was adjusted during the run{}{}</source>
        <translation>während der Fahrt wurde etwas verstellt{}{}</translation>
    </message>
    <message>
        <source>something was seen: passing_traffic, adjusted, or a word of your own</source>
        <translation>etwas wurde gesehen: passing_traffic, adjusted oder ein eigenes Wort</translation>
    </message>
    <message>
        <source>speed in km/h</source>
        <translation>Geschwindigkeit in km/h</translation>
    </message>
    <message>
        <source>speed</source>
        <comment>column</comment>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>spoiled</source>
        <comment>level of an alarm</comment>
        <translation>unbrauchbar</translation>
    </message>
    <message>
        <source>spoils the run</source>
        <comment>grade of a finding</comment>
        <translation>unbrauchbar</translation>
    </message>
    <message>
        <source>spoils</source>
        <comment>grade of a finding</comment>
        <translation>unbrauchbar</translation>
    </message>
    <message>
        <source>spread</source>
        <comment>a check</comment>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>standard error</source>
        <translation>Standardfehler</translation>
    </message>
    <message>
        <source>standard input</source>
        <translation>Standardeingabe</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>start</source>
        <comment>column</comment>
        <translation>Start</translation>
    </message>
    <message>
        <source>state</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>status</source>
        <comment>column</comment>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>steady wind</source>
        <translation>stetiger Wind</translation>
    </message>
    <message>
        <source>still day</source>
        <translation>ruhiger Tag</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>angehalten</translation>
    </message>
    <message>
        <source>stopped before the end</source>
        <translation>vor dem Ende angehalten</translation>
    </message>
    <message>
        <source>stopped before the end; nothing was imported</source>
        <translation>vor dem Ende angehalten; nichts wurde importiert</translation>
    </message>
    <message>
        <source>stopped by the user</source>
        <translation>vom Benutzer angehalten</translation>
    </message>
    <message>
        <source>stopped or crawled{}</source>
        <translation>angehalten oder gekrochen{}</translation>
    </message>
    <message>
        <source>stopped or crawled{}: down to {}</source>
        <translation>angehalten oder gekrochen{}: bis hinab auf {}</translation>
    </message>
    <message>
        <source>straight drift</source>
        <translation>geradlinige Drift</translation>
    </message>
    <message>
        <source>straight drift</source>
        <comment>interval of a plan</comment>
        <translation>geradlinige Drift</translation>
    </message>
    <message>
        <source>straight drift</source>
        <comment>of a day</comment>
        <translation>gerade Drift</translation>
    </message>
    <message>
        <source>study</source>
        <translation>Studie</translation>
    </message>
    <message>
        <source>switch first</source>
        <translation>zuerst umstellen</translation>
    </message>
    <message>
        <source>s² = RSS/df, se(δ) = s·√v, v = [(X&lt;sup&gt;T&lt;/sup&gt;X)&lt;sup&gt;−1&lt;/sup&gt;]&lt;sub&gt;δδ&lt;/sub&gt;</source>
        <translation>s² = RSS/FG, se(δ) = s·√v, v = [(X&lt;sup&gt;T&lt;/sup&gt;X)&lt;sup&gt;−1&lt;/sup&gt;]&lt;sub&gt;δδ&lt;/sub&gt;</translation>
    </message>
    <message>
        <source>tabs</source>
        <translation>Tabulatoren</translation>
    </message>
    <message>
        <source>temperature</source>
        <comment>column</comment>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>text in UTF-16</source>
        <translation>Text in UTF-16</translation>
    </message>
    <message>
        <source>text or a second root element</source>
        <translation>Text oder ein zweites Wurzelelement</translation>
    </message>
    <message>
        <source>text</source>
        <comment>what a cell of a run sheet must be</comment>
        <translation>Text</translation>
    </message>
    <message>
        <source>that of the consumption</source>
        <translation>die des Verbrauchs</translation>
    </message>
    <message>
        <source>that spoils the run: &apos;discard&apos;, then turn and drive it again</source>
        <translation>das verdirbt die Fahrt: „discard“, dann wenden und sie noch einmal fahren</translation>
    </message>
    <message>
        <source>that was no run; what was recorded stays</source>
        <translation>Das war keine Fahrt; was aufgezeichnet ist, bleibt</translation>
    </message>
    <message>
        <source>the accessory&apos;s name after the point</source>
        <translation>der Name des Nebenverbrauchers nach dem Punkt</translation>
    </message>
    <message>
        <source>the adapter cannot keep up</source>
        <translation>der Adapter kommt nicht nach</translation>
    </message>
    <message>
        <source>the adapter cannot read the car&apos;s bus</source>
        <translation>der Adapter kann den Bus des Autos nicht lesen</translation>
    </message>
    <message>
        <source>the adapter does not answer</source>
        <translation>der Adapter antwortet nicht</translation>
    </message>
    <message>
        <source>the adapter does not know what it was asked</source>
        <translation>der Adapter kennt nicht, wonach er gefragt wurde</translation>
    </message>
    <message>
        <source>the adapter lost its supply</source>
        <translation>der Adapter verlor seine Versorgung</translation>
    </message>
    <message>
        <source>the adapter reports an error</source>
        <translation>der Adapter meldet einen Fehler</translation>
    </message>
    <message>
        <source>the adapter was interrupted</source>
        <translation>der Adapter wurde unterbrochen</translation>
    </message>
    <message>
        <source>the baseline</source>
        <translation>Referenz</translation>
    </message>
    <message>
        <source>the battery ended {} V higher than it began: fuel went into charging it{}</source>
        <translation>die Batterie endete {} V höher, als sie begann: Kraftstoff floss in ihre Ladung{}</translation>
    </message>
    <message>
        <source>the battery ended {} V lower than it began: fuel was borrowed from it{}</source>
        <translation>die Batterie endete {} V niedriger, als sie begann: Kraftstoff wurde aus ihr geborgt{}</translation>
    </message>
    <message>
        <source>the car does not answer: is the ignition on?</source>
        <translation>das Auto antwortet nicht: Ist die Zündung an?</translation>
    </message>
    <message>
        <source>the car gives no data</source>
        <translation>das Auto gibt keine Daten</translation>
    </message>
    <message>
        <source>the cells {} to {} are merged; expected a value of its own in each line and column</source>
        <translation>die Zellen {} bis {} sind verbunden; erwartet wird ein eigener Wert in jeder Zeile und Spalte</translation>
    </message>
    <message>
        <source>the change is in the study, but the disk did not confirm it ({}); look whether it stays</source>
        <translation>die Änderung steht in der Studie, aber der Datenträger hat sie nicht bestätigt ({}); prüfen Sie, ob sie erhalten bleibt</translation>
    </message>
    <message>
        <source>the change is too large for a study; nothing was changed</source>
        <translation>die Änderung ist zu groß für eine Studie; nichts wurde geändert</translation>
    </message>
    <message>
        <source>the channel does not vary</source>
        <translation>der Kanal ändert sich nicht</translation>
    </message>
    <message>
        <source>the connection was lost</source>
        <translation>die Verbindung ist abgerissen</translation>
    </message>
    <message>
        <source>the consumption of the runs is in kWh/100 km; the one fuel that fits is electric</source>
        <translation>der Verbrauch der Fahrten ist in kWh/100 km; dazu passt nur der Kraftstoff electric</translation>
    </message>
    <message>
        <source>the consumption of the runs is that of a fuel; electric is for kWh/100 km</source>
        <translation>der Verbrauch der Fahrten ist der eines Kraftstoffs; electric ist für kWh/100 km</translation>
    </message>
    <message>
        <source>the control vehicle&apos;s consumption has the same unit; give control as well</source>
        <translation>der Verbrauch des Kontrollfahrzeugs hat dieselbe Einheit; geben Sie auch control an</translation>
    </message>
    <message>
        <source>the date of the line above where there is none</source>
        <translation>dem Datum der Zeile darüber, wo keines steht</translation>
    </message>
    <message>
        <source>the day before the month in dates</source>
        <translation>Tag vor Monat im Datum</translation>
    </message>
    <message>
        <source>the demo&apos;s run sheet is missing</source>
        <translation>das Fahrtenblatt der Demo fehlt</translation>
    </message>
    <message>
        <source>the device</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>the device does not answer for {}</source>
        <translation>das Gerät antwortet nicht für {}</translation>
    </message>
    <message>
        <source>the device does not give {}: {}</source>
        <translation>das Gerät gibt {} nicht: {}</translation>
    </message>
    <message>
        <source>the device turned without load{}, up to {} rpm: an open circuit, or the belt is off</source>
        <translation>das Gerät drehte{} ohne Last, bis zu {} U/min: ein offener Stromkreis, oder der Riemen ist ab</translation>
    </message>
    <message>
        <source>the disk is full; nothing was changed</source>
        <translation>der Datenträger ist voll; nichts wurde geändert</translation>
    </message>
    <message>
        <source>the distance is {} % longer than the stretch{}</source>
        <translation>die Strecke ist {} % länger als die Messstrecke{}</translation>
    </message>
    <message>
        <source>the distance is {} % shorter than the stretch{}</source>
        <translation>die Strecke ist {} % kürzer als die Messstrecke{}</translation>
    </message>
    <message>
        <source>the drive never leads through one of the gates and on to the other</source>
        <translation>die Aufzeichnung führt nirgends durch eines der Tore und weiter zum anderen</translation>
    </message>
    <message>
        <source>the drive slipped{}: generator {} % too fast for its rotor{}</source>
        <translation>der Antrieb rutschte{}: der Generator war {} % zu schnell für seinen Rotor{}</translation>
    </message>
    <message>
        <source>the drive slipped{}: generator {} % too slow for its rotor{}</source>
        <translation>der Antrieb rutschte{}: der Generator war {} % zu langsam für seinen Rotor{}</translation>
    </message>
    <message>
        <source>the file ends within &lt;{}&gt;</source>
        <translation>die Datei endet innerhalb von &lt;{}&gt;</translation>
    </message>
    <message>
        <source>the file ends within a tag or a section</source>
        <translation>die Datei endet innerhalb eines Tags oder Abschnitts</translation>
    </message>
    <message>
        <source>the finding {} of run {} was not overruled</source>
        <translation>der Befund {} der Fahrt {} wurde nicht zurückgewiesen</translation>
    </message>
    <message>
        <source>the gates are {} m apart and reach {} m to each side; expected a stretch that is longer than that</source>
        <translation>die Tore liegen {} m auseinander und reichen {} m nach jeder Seite; erwartet wird eine Messstrecke, die länger ist</translation>
    </message>
    <message>
        <source>the gates reach {} m to each side; expected more than 0 and at most {} m</source>
        <translation>die Tore reichen {} m nach jeder Seite; erwartet werden mehr als 0 und höchstens {} m</translation>
    </message>
    <message>
        <source>the hours on the road should be more than 0</source>
        <translation>die Stunden auf der Straße sollten mehr als 0 sein</translation>
    </message>
    <message>
        <source>the input is bad</source>
        <translation>die Eingabe ist fehlerhaft</translation>
    </message>
    <message>
        <source>the last line is cut short and was left out</source>
        <translation>die letzte Zeile ist abgeschnitten und wurde weggelassen</translation>
    </message>
    <message>
        <source>the latitude of the end gate is {}; expected degrees from -90 to 90</source>
        <translation>die Breite des Endtors ist {}; erwartet werden Grad von -90 bis 90</translation>
    </message>
    <message>
        <source>the latitude of the start gate is {}; expected degrees from -90 to 90</source>
        <translation>die Breite des Starttors ist {}; erwartet werden Grad von -90 bis 90</translation>
    </message>
    <message>
        <source>the line &apos;{}&apos; of the walk-round: expected {}</source>
        <translation>die Zeile „{}“ des Rundgangs: erwartet wird {}</translation>
    </message>
    <message>
        <source>the longitude of the end gate is {}; expected degrees from -180 to 180</source>
        <translation>die Länge des Endtors ist {}; erwartet werden Grad von -180 bis 180</translation>
    </message>
    <message>
        <source>the longitude of the start gate is {}; expected degrees from -180 to 180</source>
        <translation>die Länge des Starttors ist {}; erwartet werden Grad von -180 bis 180</translation>
    </message>
    <message>
        <source>the mapping kept for this header was used</source>
        <translation>die für diese Kopfzeile gemerkte Zuordnung wurde benutzt</translation>
    </message>
    <message>
        <source>the memory is full; nothing was changed</source>
        <translation>der Arbeitsspeicher ist voll; nichts wurde geändert</translation>
    </message>
    <message>
        <source>the month before the day in dates</source>
        <translation>Monat vor Tag im Datum</translation>
    </message>
    <message>
        <source>the new name is not UTF-8 text</source>
        <translation>der neue Name ist kein UTF-8-Text</translation>
    </message>
    <message>
        <source>the property &apos;{}&apos;</source>
        <translation>die Eigenschaft „{}“</translation>
    </message>
    <message>
        <source>the property &apos;{}&apos; is not UTF-8 text</source>
        <translation>die Eigenschaft „{}“ ist kein UTF-8-Text</translation>
    </message>
    <message>
        <source>the reason &apos;other&apos; needs words: --evidence &apos;what was seen&apos;</source>
        <translation>der Grund „other“ braucht Worte: --evidence &apos;was zu sehen war&apos;</translation>
    </message>
    <message>
        <source>the reason &apos;other&apos; needs words: what was seen</source>
        <translation>der Grund „other“ braucht Worte: was gesehen wurde</translation>
    </message>
    <message>
        <source>the receiver has no position yet</source>
        <translation>der Empfänger hat noch keine Position</translation>
    </message>
    <message>
        <source>the recording has a clock of its own, which says when it began; expected only by how much it is wrong</source>
        <translation>die Aufzeichnung hat eine eigene Uhr, die ihren Beginn nennt; erwartet wird nur, um wie viel sie falsch geht</translation>
    </message>
    <message>
        <source>the recording has no clock that could be wrong; expected when it began</source>
        <translation>die Aufzeichnung hat keine Uhr, die falsch gehen könnte; erwartet wird, wann sie begann</translation>
    </message>
    <message>
        <source>the recording has no clock; expected marks, positions or speed to cut by</source>
        <translation>die Aufzeichnung hat keine Uhr; erwartet werden Marken, Positionen oder Geschwindigkeit zum Schneiden</translation>
    </message>
    <message>
        <source>the recording has no clock; expected the date and time of its start</source>
        <translation>die Aufzeichnung hat keine Uhr; erwartet werden Datum und Uhrzeit ihres Starts</translation>
    </message>
    <message>
        <source>the recording has no mark that begins with &quot;start&quot;</source>
        <translation>die Aufzeichnung hat keine Marke, die mit „start“ beginnt</translation>
    </message>
    <message>
        <source>the recording has no positions; expected channels lat_deg and lon_deg</source>
        <translation>die Aufzeichnung hat keine Positionen; erwartet werden die Kanäle lat_deg und lon_deg</translation>
    </message>
    <message>
        <source>the recording has no speed; expected a channel road_speed_kmh</source>
        <translation>die Aufzeichnung hat keine Geschwindigkeit; erwartet wird ein Kanal road_speed_kmh</translation>
    </message>
    <message>
        <source>the recording stops {} s before the run does</source>
        <translation>die Aufzeichnung endet {} s vor der Fahrt</translation>
    </message>
    <message>
        <source>the recording tells the time in UTC and the study in local time; expected the local time&apos;s offset from UTC, like +02:00</source>
        <translation>die Aufzeichnung nennt die Zeit in UTC und die Studie in Ortszeit; erwartet wird der Abstand der Ortszeit zu UTC, etwa +02:00</translation>
    </message>
    <message>
        <source>the recording {} ({}) is damaged in channel {}: {}; restore the study from a copy</source>
        <translation>die Aufzeichnung {} ({}) ist im Kanal {} beschädigt: {}; stellen Sie die Studie aus einer Kopie wieder her</translation>
    </message>
    <message>
        <source>the recording {} was not stopped; its {} min up to the last second are in the study</source>
        <translation>die Aufzeichnung {} wurde nicht beendet; ihre {} min bis zur letzten Sekunde sind in der Studie</translation>
    </message>
    <message>
        <source>the rig lists no channels; name them with &apos;bothways rig new&apos; and --channel</source>
        <translation>die Messausrüstung führt keine Kanäle auf; benennen mit „bothways rig new“ und --channel</translation>
    </message>
    <message>
        <source>the run</source>
        <translation>die Fahrt</translation>
    </message>
    <message>
        <source>the run does not count; without a reason, for what spoils it</source>
        <translation>die Fahrt zählt nicht; ohne Grund: wegen dessen, was sie verdirbt</translation>
    </message>
    <message>
        <source>the run has no recording</source>
        <translation>die Fahrt hat keine Aufzeichnung</translation>
    </message>
    <message>
        <source>the run has no start; expected start=HH:MM:SS or start=DATE-AND-TIME, like start=05:40 or start=2026-05-09T05:40:00</source>
        <translation>die Fahrt hat keinen Start; erwartet wird start=HH:MM:SS oder start=DATUM-UND-ZEIT, etwa start=05:40 oder start=2026-05-09T05:40:00</translation>
    </message>
    <message>
        <source>the run has no {0}, and no run before it says one; expected {0}=NAME</source>
        <translation>der Fahrt fehlt {0}, und keine Fahrt davor gibt es vor; erwartet wird {0}=NAME</translation>
    </message>
    <message>
        <source>the run is forgotten; what was recorded stays</source>
        <translation>die Fahrt ist vergessen; was aufgezeichnet wurde, bleibt</translation>
    </message>
    <message>
        <source>the run sheets that Bothways reads</source>
        <translation>die Fahrtenblätter, die Bothways liest</translation>
    </message>
    <message>
        <source>the run under way is not written</source>
        <translation>die laufende Fahrt wird nicht geschrieben</translation>
    </message>
    <message>
        <source>the run under way was not ended: it is in the recording alone, from its mark &apos;start&apos; on</source>
        <translation>die laufende Fahrt wurde nicht beendet: Sie steht nur in der Aufzeichnung, von ihrer Marke „start“ an</translation>
    </message>
    <message>
        <source>the runs {0}-{1} run backwards; expected {1}-{0}</source>
        <translation>die Fahrten {0}-{1} laufen rückwärts; erwartet wird {1}-{0}</translation>
    </message>
    <message>
        <source>the same mark on the two runs of a pair</source>
        <translation>dieselbe Marke bei beiden Fahrten eines Paares</translation>
    </message>
    <message>
        <source>the same, for {} at once (Bonferroni)</source>
        <translation>dasselbe, für {} zugleich (Bonferroni)</translation>
    </message>
    <message>
        <source>the sequence &apos;{}&apos; should be letters A and B, with both in it, like ABA or ABBA</source>
        <translation>die Folge „{}“ sollte aus A und B bestehen, mit beiden darin, wie ABA oder ABBA</translation>
    </message>
    <message>
        <source>the sequence has {} letters; at most {} are permitted</source>
        <translation>die Folge hat {} Buchstaben; höchstens {} sind erlaubt</translation>
    </message>
    <message>
        <source>the setting measured {}° above the one set{}</source>
        <translation>die gemessene Einstellung lag {}° über der vorgegebenen{}</translation>
    </message>
    <message>
        <source>the setting measured {}° below the one set{}</source>
        <translation>die gemessene Einstellung lag {}° unter der vorgegebenen{}</translation>
    </message>
    <message>
        <source>the setting was moved by {}° during the run{}</source>
        <translation>die Einstellung wurde während der Fahrt um {}° verändert{}</translation>
    </message>
    <message>
        <source>the sheet has times of day only; {} was taken as its date</source>
        <translation>das Blatt hat nur Uhrzeiten; als Datum wurde {} genommen</translation>
    </message>
    <message>
        <source>the study cannot be written</source>
        <translation>die Studie kann nicht geschrieben werden</translation>
    </message>
    <message>
        <source>the study had the recording {} already, with the same times and rows; &apos;bothways undo {}&apos; takes the second one out again</source>
        <translation>die Studie hatte die Aufzeichnung {} schon, mit denselben Zeiten und Zeilen; „bothways undo {}“ nimmt die zweite wieder heraus</translation>
    </message>
    <message>
        <source>the study has no configuration yet</source>
        <translation>die Studie hat noch keine Konfiguration</translation>
    </message>
    <message>
        <source>the study has no configuration {}; expected {}</source>
        <translation>die Studie hat keine Konfiguration {}; erwartet wird {}</translation>
    </message>
    <message>
        <source>the study has no direction yet</source>
        <translation>die Studie hat noch keine Richtung</translation>
    </message>
    <message>
        <source>the study has no direction {}; expected {}</source>
        <translation>die Studie hat keine Richtung {}; erwartet wird {}</translation>
    </message>
    <message>
        <source>the study has no recording {}</source>
        <translation>die Studie hat keine Aufzeichnung {}</translation>
    </message>
    <message>
        <source>the study has no run {}</source>
        <translation>die Studie hat keine Fahrt {}</translation>
    </message>
    <message>
        <source>the study has no runs to cut by; expected their times</source>
        <translation>die Studie hat keine Fahrten, nach denen sich schneiden ließe; erwartet werden ihre Zeiten</translation>
    </message>
    <message>
        <source>the study has no such recording</source>
        <translation>die Studie hat keine solche Aufzeichnung</translation>
    </message>
    <message>
        <source>the study has no such run</source>
        <translation>die Studie hat keine solche Fahrt</translation>
    </message>
    <message>
        <source>the study has no timed accessory &apos;{}&apos;</source>
        <translation>die Studie hat keinen Verbraucher „{}“ mit Zeitschalter</translation>
    </message>
    <message>
        <source>the study has {} run already: the plan comes late, which the verdict says</source>
        <translation>die Studie hat schon {} Fahrt: Der Plan kommt spät, was das Urteil sagt</translation>
    </message>
    <message>
        <source>the study has {} runs already: the plan comes late, which the verdict says</source>
        <translation>die Studie hat schon {} Fahrten: Der Plan kommt spät, was das Urteil sagt</translation>
    </message>
    <message>
        <source>the study {}; choose with &apos;bothways set STUDY baseline=NAME&apos;</source>
        <translation>die Studie {}; die Wahl trifft „bothways set STUDIE baseline=NAME“</translation>
    </message>
    <message>
        <source>the study&apos;s fuel is electric; expected kwh_per_100km, or another fuel of the study first</source>
        <translation>der Kraftstoff der Studie ist electric; erwartet wird kwh_per_100km, oder zuerst ein anderer Kraftstoff der Studie</translation>
    </message>
    <message>
        <source>the study&apos;s fuel is not electric; expected a consumption of fuel, or fuel=electric of the study first</source>
        <translation>der Kraftstoff der Studie ist nicht electric; erwartet wird ein Kraftstoffverbrauch, oder zuerst fuel=electric der Studie</translation>
    </message>
    <message>
        <source>the target of {} km/h was never held; held speed: {} km/h; set road_speed.target_kmh to choose it</source>
        <translation>das Ziel von {} km/h wurde nie gehalten; gehaltene Geschwindigkeit: {} km/h; road_speed.target_kmh zu setzen, wählt sie</translation>
    </message>
    <message>
        <source>the verdict was looked at before: the plan comes late, which the verdict says; a smaller one does not end what a look began</source>
        <translation>das Urteil wurde schon angesehen: Der Plan kommt spät, was das Urteil sagt; ein kleinerer beendet nicht, was ein Blick begonnen hat</translation>
    </message>
    <message>
        <source>the wanted effect should be more than 0 %</source>
        <translation>der gesuchte Effekt sollte größer als 0 % sein</translation>
    </message>
    <message>
        <source>the weather is noted; it goes into the run</source>
        <translation>das Wetter ist notiert; es kommt in die Fahrt</translation>
    </message>
    <message>
        <source>the weather of the block, like temperature_c=14 wind_ms=2 wind_from_deg=270</source>
        <translation>das Wetter des Blocks, etwa temperature_c=14 wind_ms=2 wind_from_deg=270</translation>
    </message>
    <message>
        <source>there is a rig &apos;{}&apos; already; to replace it, give --replace</source>
        <translation>es gibt schon eine Messausrüstung „{}“; zum Ersetzen --replace angeben</translation>
    </message>
    <message>
        <source>there is no &quot;{}&quot; here; expected one of {}</source>
        <translation>„{}“ gibt es hier nicht; erwartet: eines von {}</translation>
    </message>
    <message>
        <source>there is no channel &apos;{}&apos;; expected one of {}</source>
        <translation>es gibt keinen Kanal „{}“; erwartet: einer von {}</translation>
    </message>
    <message>
        <source>there is no column &apos;{}&apos;</source>
        <translation>es gibt keine Spalte &apos;{}&apos;</translation>
    </message>
    <message>
        <source>there is no folder for settings; expected HOME to be set</source>
        <translation>es gibt keinen Ordner für Einstellungen; erwartet: HOME ist gesetzt</translation>
    </message>
    <message>
        <source>there is no language &apos;{}&apos;; expected one of {}</source>
        <translation>die Sprache „{}“ gibt es nicht; erwartet wird eine von {}</translation>
    </message>
    <message>
        <source>there is no recording &apos;{}&apos;: the study has none</source>
        <translation>es gibt keine Aufzeichnung „{}“: Die Studie hat keine</translation>
    </message>
    <message>
        <source>there is no recording &apos;{}&apos;; expected one of {}</source>
        <translation>es gibt keine Aufzeichnung „{}“; erwartet wird eine von {}</translation>
    </message>
    <message>
        <source>there is no rig &apos;{}&apos;; expected one of {}, or a file NAME.json</source>
        <translation>es gibt keine Messausrüstung „{}“; erwartet: eine von {} oder eine Datei NAME.json</translation>
    </message>
    <message>
        <source>there is no rig &apos;{}&apos;; make one with: bothways rig new {} KIND:ADDRESS</source>
        <translation>es gibt keine Messausrüstung „{}“; anlegen mit: bothways rig new {} ART:ADRESSE</translation>
    </message>
    <message>
        <source>there is no run to discard</source>
        <translation>es gibt keine Fahrt zu verwerfen</translation>
    </message>
    <message>
        <source>there is no run {}: the study has no runs</source>
        <translation>es gibt keine Fahrt {}: Die Studie hat keine Fahrten</translation>
    </message>
    <message>
        <source>there is no run {}: the study&apos;s runs are numbered {} to {}</source>
        <translation>es gibt keine Fahrt {}: Die Fahrten der Studie tragen die Nummern {} bis {}</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>die Datei gibt es nicht</translation>
    </message>
    <message>
        <source>there is no such file, and none of this name in {}</source>
        <translation>diese Datei gibt es nicht, und keine dieses Namens in {}</translation>
    </message>
    <message>
        <source>there is no such file; expected a study</source>
        <translation>die Datei gibt es nicht; erwartet wird eine Studie</translation>
    </message>
    <message>
        <source>there is no such file; expected the recording where its sheet has it, or to be told its folder: --traces FOLDER</source>
        <translation>keine solche Datei; erwartet wurde die Aufzeichnung dort, wo ihr Blatt sie hat, oder die Angabe ihres Ordners: --traces ORDNER</translation>
    </message>
    <message>
        <source>there is no such file; expected {}</source>
        <translation>die Datei gibt es nicht; erwartet wird {}</translation>
    </message>
    <message>
        <source>there is no such host</source>
        <translation>diesen Rechner gibt es nicht</translation>
    </message>
    <message>
        <source>there is no verb &apos;{}&apos;; expected one of {}</source>
        <translation>den Befehl „{}“ gibt es nicht; erwartet wird einer von {}</translation>
    </message>
    <message>
        <source>there is no verdict in it, so the noise of a pair is not known; give it with --noise</source>
        <translation>darin gibt es kein Urteil, also ist das Rauschen eines Paars nicht bekannt; geben Sie es mit --noise an</translation>
    </message>
    <message>
        <source>there is no verdict in it, so the noise of a pair is not known; name a study that has one</source>
        <translation>es enthält kein Urteil, das Rauschen eines Paars ist also nicht bekannt; nennen Sie eine Studie, die eines hat</translation>
    </message>
    <message>
        <source>there is no {}</source>
        <translation>{} gibt es nicht</translation>
    </message>
    <message>
        <source>there is not enough memory</source>
        <translation>der Speicher reicht nicht</translation>
    </message>
    <message>
        <source>there is not enough memory for this</source>
        <translation>dafür reicht der Speicher nicht</translation>
    </message>
    <message>
        <source>there is nothing to redo</source>
        <translation>es gibt nichts wiederherzustellen</translation>
    </message>
    <message>
        <source>there is nothing to undo</source>
        <translation>es gibt nichts rückgängig zu machen</translation>
    </message>
    <message>
        <source>there is such a file already</source>
        <translation>es gibt diese Datei schon</translation>
    </message>
    <message>
        <source>there is such a file already; {}</source>
        <translation>es gibt diese Datei schon; {}</translation>
    </message>
    <message>
        <source>these points make a factor of {}; expected one between 0.000001 and 1000000: was a digit left out?</source>
        <translation>diese Punkte ergeben einen Faktor von {}; erwartet: einer zwischen 0,000001 und 1000000: Wurde eine Ziffer ausgelassen?</translation>
    </message>
    <message>
        <source>this block begins without its walk-round</source>
        <translation>dieser Block beginnt ohne seinen Rundgang</translation>
    </message>
    <message>
        <source>this car does not give {}</source>
        <translation>dieses Auto gibt {} nicht</translation>
    </message>
    <message>
        <source>this car gives none of the values that are read</source>
        <translation>dieses Auto gibt keinen der Werte, die gelesen werden</translation>
    </message>
    <message>
        <source>this folder cannot be made: {}</source>
        <translation>dieser Ordner kann nicht angelegt werden: {}</translation>
    </message>
    <message>
        <source>this is no JSON; expected a rig as &apos;bothways rig new&apos; writes it</source>
        <translation>das ist kein JSON; erwartet: eine Messausrüstung, wie „bothways rig new“ sie schreibt</translation>
    </message>
    <message>
        <source>this look at a planned study could not be recorded: {}</source>
        <translation>dieser Blick auf eine geplante Studie ließ sich nicht festhalten: {}</translation>
    </message>
    <message>
        <source>this look at the verdict could not be recorded: {}</source>
        <translation>dieser Blick auf das Urteil ließ sich nicht festhalten: {}</translation>
    </message>
    <message>
        <source>this rig has version {}, and this program knows {}; a newer program reads it</source>
        <translation>diese Messausrüstung hat Version {}, und dieses Programm kennt {}; ein neueres Programm liest sie</translation>
    </message>
    <message>
        <source>tied runs {} and {}</source>
        <translation>Fahrten {} und {} verbunden</translation>
    </message>
    <message>
        <source>timed accessory dropped out</source>
        <translation>Zeitschaltung schaltete ab</translation>
    </message>
    <message>
        <source>to replace it, give {} {} --replace</source>
        <translation>ersetzt wird sie mit {} {} --replace</translation>
    </message>
    <message>
        <source>together</source>
        <translation>zusammen</translation>
    </message>
    <message>
        <source>too large for a rig; expected a rig in JSON, 1 MB at most</source>
        <translation>zu groß für eine Messausrüstung; erwartet: eine Messausrüstung in JSON, höchstens 1 MB</translation>
    </message>
    <message>
        <source>two channels are called &apos;{}&apos;; expected another name for one, perhaps with its part, as in rotor_rpm@left</source>
        <translation>zwei Kanäle heißen „{}“; erwartet: ein anderer Name für einen, etwa mit seinem Teil wie in rotor_rpm@left</translation>
    </message>
    <message>
        <source>two columns for the channel &apos;{}&apos;</source>
        <translation>zwei Spalten für den Kanal „{}“</translation>
    </message>
    <message>
        <source>two instruments are called &apos;{}&apos;; expected another name for one</source>
        <translation>zwei Messgeräte heißen „{}“; erwartet: ein anderer Name für eines</translation>
    </message>
    <message>
        <source>two numbers above 0, the noise of a pair in per cent and its degrees of freedom, like 0.9,21</source>
        <translation>zwei Zahlen über 0, das Rauschen eines Paars in Prozent und seine Freiheitsgrade, wie 0.9,21</translation>
    </message>
    <message>
        <source>type where the gates at the two ends of the stretch are</source>
        <translation>geben Sie ein, wo die Tore an den beiden Enden der Strecke sind</translation>
    </message>
    <message>
        <source>typed or trace; empty: typed</source>
        <translation>typed oder trace; leer: typed</translation>
    </message>
    <message>
        <source>undecided</source>
        <comment>verdict</comment>
        <translation>nicht entscheidbar</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>unit {} is no number of a Modbus device</source>
        <translation>unit {} ist keine Nummer eines Modbus-Geräts</translation>
    </message>
    <message>
        <source>unit</source>
        <comment>of a column</comment>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>unpacks to more than {} MB; expected a run sheet</source>
        <translation>wird entpackt größer als {} MB; erwartet wird ein Fahrtenblatt</translation>
    </message>
    <message>
        <source>untied run {}</source>
        <translation>Fahrt {} gelöst</translation>
    </message>
    <message>
        <source>untied runs {}</source>
        <translation>Fahrten {} gelöst</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>üblich</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>vibration</source>
        <translation>Vibration</translation>
    </message>
    <message>
        <source>vibration up to {} m/s²{}{}</source>
        <translation>Vibration bis {} m/s²{}{}</translation>
    </message>
    <message>
        <source>vibration</source>
        <comment>a channel</comment>
        <translation>Vibration</translation>
    </message>
    <message>
        <source>waiting for {}, which reads the study</source>
        <translation>wartet, weil die Studie von {} gelesen wird</translation>
    </message>
    <message>
        <source>waiting for {}, which writes the study</source>
        <translation>wartet, weil die Studie von {} beschrieben wird</translation>
    </message>
    <message>
        <source>walk-round before run {}: lines that are not ticked: {}</source>
        <translation>Rundgang vor Fahrt {}: nicht abgehakte Zeilen: {}</translation>
    </message>
    <message>
        <source>warm after each stop</source>
        <translation>warm nach jedem Halt</translation>
    </message>
    <message>
        <source>warming up</source>
        <translation>Warmlauf</translation>
    </message>
    <message>
        <source>warning</source>
        <comment>level of an alarm</comment>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>warning: {}</source>
        <translation>Warnung: {}</translation>
    </message>
    <message>
        <source>was made by a newer Bothways (format {}; this one knows formats up to {}); it is left as it is</source>
        <translation>stammt von einem neueren Bothways (Format {}; dieses kennt Formate bis {}); die Datei bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>watts above 0</source>
        <translation>Watt über 0</translation>
    </message>
    <message>
        <source>watts and minutes above 0, like 300,10</source>
        <translation>Watt und Minuten über 0, wie 300,10</translation>
    </message>
    <message>
        <source>way</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>ways</source>
        <comment>a check</comment>
        <translation>gleich in beiden Richtungen</translation>
    </message>
    <message>
        <source>what about the rig? Expected one of try, new, show, list, calibrate, ports</source>
        <translation>was soll mit der Messausrüstung geschehen? Erwartet: eines von try, new, show, list, calibrate, ports</translation>
    </message>
    <message>
        <source>what comes is no text</source>
        <translation>was kommt, ist kein Text</translation>
    </message>
    <message>
        <source>what comes is no text: is {} baud right?</source>
        <translation>was kommt, ist kein Text: Stimmen {} Baud?</translation>
    </message>
    <message>
        <source>what happened</source>
        <translation>was geschah</translation>
    </message>
    <message>
        <source>what is in a study file of Bothways</source>
        <translation>was in einer Studiendatei von Bothways ist</translation>
    </message>
    <message>
        <source>what it is</source>
        <translation>was es ist</translation>
    </message>
    <message>
        <source>whatever comes, under its own name</source>
        <translation>was auch kommt, unter seinem eigenen Namen</translation>
    </message>
    <message>
        <source>when accessory NAME went on, from the run&apos;s start</source>
        <translation>wann der Verbraucher NAME eingeschaltet wurde, ab dem Start der Fahrt</translation>
    </message>
    <message>
        <source>whose</source>
        <translation>woher</translation>
    </message>
    <message>
        <source>whose channel is &apos;{}&apos;? Expected INSTRUMENT/SOURCE=CHANNEL, as in {}/rpm=rotor_rpm</source>
        <translation>wessen Kanal ist „{}“? Erwartet: MESSGERÄT/QUELLE=KANAL wie {}/rpm=rotor_rpm</translation>
    </message>
    <message>
        <source>widest gap inside a pair</source>
        <translation>größte Lücke in einem Paar</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>wind from</source>
        <comment>column</comment>
        <translation>Wind aus</translation>
    </message>
    <message>
        <source>wind</source>
        <comment>column</comment>
        <translation>Wind</translation>
    </message>
    <message>
        <source>with run {}: {}</source>
        <translation>mit Fahrt {}: {}</translation>
    </message>
    <message>
        <source>with</source>
        <comment>the device</comment>
        <translation>mit</translation>
    </message>
    <message>
        <source>without pair {}: {}, {}</source>
        <translation>ohne Paar {}: {}, {}</translation>
    </message>
    <message>
        <source>without</source>
        <comment>the device</comment>
        <translation>ohne</translation>
    </message>
    <message>
        <source>words, at most {} bytes</source>
        <translation>Worte, höchstens {} Bytes</translation>
    </message>
    <message>
        <source>wrong distance</source>
        <translation>falsche Streckenlänge</translation>
    </message>
    <message>
        <source>wrong use</source>
        <translation>falscher Aufruf</translation>
    </message>
    <message>
        <source>wrote the pairs to {}</source>
        <translation>Paare nach {} geschrieben</translation>
    </message>
    <message>
        <source>wrote the run card: {}</source>
        <translation>Fahrtenkarte geschrieben: {}</translation>
    </message>
    <message>
        <source>wrote {}</source>
        <translation>{} geschrieben</translation>
    </message>
    <message>
        <source>wrote {} run to {}</source>
        <translation>{} Fahrt nach {} geschrieben</translation>
    </message>
    <message>
        <source>wrote {} runs to {}</source>
        <translation>{} Fahrten nach {} geschrieben</translation>
    </message>
    <message>
        <source>yaw rate</source>
        <translation>Gierrate</translation>
    </message>
    <message>
        <source>zero, and a margin of {} %</source>
        <translation>Null und eine Relevanzschwelle von {} %</translation>
    </message>
    <message>
        <source>{}</source>
        <translation>{}</translation>
    </message>
    <message>
        <source>{} %</source>
        <translation>{} %</translation>
    </message>
    <message>
        <source>{} % less</source>
        <comment>a claim</comment>
        <translation>{} % weniger</translation>
    </message>
    <message>
        <source>{} % more</source>
        <comment>a claim</comment>
        <translation>{} % mehr</translation>
    </message>
    <message>
        <source>{} %</source>
        <comment>stands before the word interval</comment>
        <translation>{}‑%</translation>
    </message>
    <message>
        <source>{} (density)</source>
        <translation>{} (Dichte)</translation>
    </message>
    <message>
        <source>{} (its interval leaves the estimate out)</source>
        <translation>{} (dessen Intervall lässt den Schätzwert außerhalb)</translation>
    </message>
    <message>
        <source>{} (process {}, since {})</source>
        <translation>{} (Prozess {}, seit {})</translation>
    </message>
    <message>
        <source>{} (the median of {} runs)</source>
        <translation>{} (Median von {} Fahrten)</translation>
    </message>
    <message>
        <source>{} (their interval leaves the estimate out)</source>
        <translation>{} (deren Intervall lässt den Schätzwert außerhalb)</translation>
    </message>
    <message>
        <source>{} (wind)</source>
        <translation>{} (Wind)</translation>
    </message>
    <message>
        <source>{} ({} W) had switched itself off before the run</source>
        <translation>{} ({} W) hatte sich schon vor der Fahrt abgeschaltet</translation>
    </message>
    <message>
        <source>{} ({} W) switched itself off at {} s</source>
        <translation>{} ({} W) hat sich bei {} s selbst abgeschaltet</translation>
    </message>
    <message>
        <source>{} ({} W, {} min): leave it off. Switched on at {} it would drop out at {}. On at ________, off at ________</source>
        <translation>{} ({} W, {} min): ausgeschaltet lassen. Um {} eingeschaltet, fiele es um {} ab. An um ________, aus um ________</translation>
    </message>
    <message>
        <source>{} ({} interval: {}; {})</source>
        <translation>{} ({}-Intervall: {}; {})</translation>
    </message>
    <message>
        <source>{} ({} run says it)</source>
        <translation>{} (das sagt {} Fahrt)</translation>
    </message>
    <message>
        <source>{} ({})</source>
        <translation>{} ({})</translation>
    </message>
    <message>
        <source>{} ({})</source>
        <comment>a number, and whence it is</comment>
        <translation>{} ({})</translation>
    </message>
    <message>
        <source>{} ({}, {})</source>
        <translation>{} ({}, {})</translation>
    </message>
    <message>
        <source>{} Did you mean {} {}?</source>
        <comment>an odd consumption, and the likely one</comment>
        <translation>{} War {} {} gemeint?</translation>
    </message>
    <message>
        <source>{} a block</source>
        <translation>{} je Block</translation>
    </message>
    <message>
        <source>{} and {}</source>
        <translation>{} und {}</translation>
    </message>
    <message>
        <source>{} and {} less</source>
        <translation>{} und {} weniger</translation>
    </message>
    <message>
        <source>{} and {} more</source>
        <translation>{} und {} mehr</translation>
    </message>
    <message>
        <source>{} and {} more channel</source>
        <translation>{} und {} weiterer Kanal</translation>
    </message>
    <message>
        <source>{} and {} more channels</source>
        <translation>{} und {} weitere Kanäle</translation>
    </message>
    <message>
        <source>{} and {} perhaps scatter unalike {}: one noise was taken for both, so the interval may be too narrow or too wide. Find what was restless in one of them: settings, a timer, the traffic; a single pair far out looks the same.</source>
        <translation>{} und {} streuen vielleicht ungleich {}: Für beide wurde dasselbe Rauschen angenommen, das Intervall kann also zu schmal oder zu breit sein. Suchen Sie, was bei einer der beiden unruhig war: Einstellungen, eine Zeitschaltung, der Verkehr; ein einzelnes weit entferntes Paar sieht ebenso aus.</translation>
    </message>
    <message>
        <source>{} and {} scatter alike {}.</source>
        <translation>{} und {} streuen gleich {}.</translation>
    </message>
    <message>
        <source>{} and {} scatter unalike {}: one noise was taken for both, so the interval may be too narrow or too wide. Find what was restless in one of them: settings, a timer, the traffic; a single pair far out looks the same.</source>
        <translation>{} und {} streuen ungleich {}: Für beide wurde dasselbe Rauschen angenommen, das Intervall kann also zu schmal oder zu breit sein. Suchen Sie, was bei einer der beiden unruhig war: Einstellungen, eine Zeitschaltung, der Verkehr; ein einzelnes weit entferntes Paar sieht ebenso aus.</translation>
    </message>
    <message>
        <source>{} between columns and decimal commas</source>
        <translation>{} zwischen den Spalten und Dezimalkommas</translation>
    </message>
    <message>
        <source>{} between columns and decimal points</source>
        <translation>{} zwischen den Spalten und Dezimalpunkten</translation>
    </message>
    <message>
        <source>{} byte lost</source>
        <translation>{} Byte verloren</translation>
    </message>
    <message>
        <source>{} bytes lost</source>
        <translation>{} Bytes verloren</translation>
    </message>
    <message>
        <source>{} cannot be opened: {}</source>
        <translation>{} kann nicht geöffnet werden: {}</translation>
    </message>
    <message>
        <source>{} cell that is no number, taken as empty</source>
        <translation>{} Zelle, die keine Zahl ist, als leer genommen</translation>
    </message>
    <message>
        <source>{} cells that are no number, taken as empty</source>
        <translation>{} Zellen, die keine Zahl sind, als leer genommen</translation>
    </message>
    <message>
        <source>{} change of the clock</source>
        <translation>{} Umstellung der Uhr</translation>
    </message>
    <message>
        <source>{} change of the rate of rows</source>
        <translation>{}-mal ändert sich der Takt der Zeilen</translation>
    </message>
    <message>
        <source>{} changes of the clock</source>
        <translation>{} Umstellungen der Uhr</translation>
    </message>
    <message>
        <source>{} changes of the rate of rows</source>
        <translation>{}-mal ändert sich der Takt der Zeilen</translation>
    </message>
    <message>
        <source>{} channel</source>
        <translation>{} Kanal</translation>
    </message>
    <message>
        <source>{} channels</source>
        <translation>{} Kanäle</translation>
    </message>
    <message>
        <source>{} columns; expected {} at most</source>
        <translation>{} Spalten; erwartet werden höchstens {}</translation>
    </message>
    <message>
        <source>{} degrees of freedom behind the noise; more than 0 is needed</source>
        <translation>{} Freiheitsgrade hinter dem Rauschen; nötig ist mehr als 0</translation>
    </message>
    <message>
        <source>{} does not agree with the consumption; expected the same amount, as a number and a unit</source>
        <translation>{} stimmt nicht mit dem Verbrauch überein; erwartet wird dieselbe Menge als Zahl und Einheit</translation>
    </message>
    <message>
        <source>{} does not take {} baud: {}</source>
        <translation>{} nimmt {} Baud nicht an: {}</translation>
    </message>
    <message>
        <source>{} drops out in {} min</source>
        <translation>{} schaltet in {} min ab</translation>
    </message>
    <message>
        <source>{} drops out in {} s</source>
        <translation>{} schaltet in {} s ab</translation>
    </message>
    <message>
        <source>{} empty cell</source>
        <translation>{} leere Zelle</translation>
    </message>
    <message>
        <source>{} empty cells</source>
        <translation>{} leere Zellen</translation>
    </message>
    <message>
        <source>{} excludes {}</source>
        <translation>{} und {} schließen einander aus</translation>
    </message>
    <message>
        <source>{} fell by {} {}{}: it was reset, and does not say what was used</source>
        <translation>{} fiel um {} {}{}: Er wurde zurückgestellt und sagt nicht, was verbraucht wurde</translation>
    </message>
    <message>
        <source>{} from {} in {}; none discarded.</source>
        <translation>{} aus {} in {}; keine verworfen.</translation>
    </message>
    <message>
        <source>{} from {} in {}; {} discarded.</source>
        <translation>{} aus {} in {}; {} verworfen.</translation>
    </message>
    <message>
        <source>{} frozen at one value{} while the vehicle&apos;s speed moved</source>
        <translation>{} auf einem Wert eingefroren{}, während sich die Geschwindigkeit des Fahrzeugs änderte</translation>
    </message>
    <message>
        <source>{} gap, the longest {} s</source>
        <translation>{} Lücke, die längste {} s</translation>
    </message>
    <message>
        <source>{} gaps, the longest {} s</source>
        <translation>{} Lücken, die längste {} s</translation>
    </message>
    <message>
        <source>{} get no part of {}; where the recorder&apos;s clock is wrong, --shift SECONDS sets it right</source>
        <translation>{} bekommen keinen Teil von {}; geht die Uhr des Loggers falsch, stellt --shift SEKUNDEN sie richtig</translation>
    </message>
    <message>
        <source>{} gets no part of {}; where the recorder&apos;s clock is wrong, --shift SECONDS sets it right</source>
        <translation>{} bekommt keinen Teil von {}; geht die Uhr des Loggers falsch, stellt --shift SEKUNDEN sie richtig</translation>
    </message>
    <message>
        <source>{} has a decimal comma; the other numbers of this sheet have a decimal point</source>
        <translation>{} hat ein Dezimalkomma; die anderen Zahlen dieses Blatts haben einen Dezimalpunkt</translation>
    </message>
    <message>
        <source>{} has a decimal point; the other numbers of this sheet have a decimal comma</source>
        <translation>{} hat einen Dezimalpunkt; die anderen Zahlen dieses Blatts haben ein Dezimalkomma</translation>
    </message>
    <message>
        <source>{} has dropped out</source>
        <translation>{} hat abgeschaltet</translation>
    </message>
    <message>
        <source>{} has no column &apos;{}&apos;; expected one of {}</source>
        <translation>{} hat keine Spalte „{}“; erwartet wird eine von {}</translation>
    </message>
    <message>
        <source>{} has no time of day; expected one with its date</source>
        <translation>{} hat keine Uhrzeit; erwartet wird eine neben dem Datum</translation>
    </message>
    <message>
        <source>{} holds the same as {}, and counts twice</source>
        <translation>{} enthält dasselbe wie {} und zählt doppelt</translation>
    </message>
    <message>
        <source>{} hours are too few: ABA with 2 pairs a block takes {}</source>
        <translation>{} Stunden sind zu wenig: ABA mit 2 Paaren je Block dauert {}</translation>
    </message>
    <message>
        <source>{} interval</source>
        <translation>{}-Intervall</translation>
    </message>
    <message>
        <source>{} is a date and time where the lines before have a time of day; expected one form throughout</source>
        <translation>{} sind Datum und Uhrzeit, wo die Zeilen davor eine Uhrzeit haben; erwartet wird durchweg eine Form</translation>
    </message>
    <message>
        <source>{} is a third configuration; expected {} or {}</source>
        <translation>{} ist eine dritte Konfiguration; erwartet wird {} oder {}</translation>
    </message>
    <message>
        <source>{} is a third direction; expected {} or {}</source>
        <translation>{} ist eine dritte Richtung; erwartet wird {} oder {}</translation>
    </message>
    <message>
        <source>{} is a time of day where the lines before have a date and time; expected one form throughout</source>
        <translation>{} ist eine Uhrzeit, wo die Zeilen davor Datum und Uhrzeit haben; erwartet wird durchweg eine Form</translation>
    </message>
    <message>
        <source>{} is another file now</source>
        <translation>{} ist jetzt eine andere Datei</translation>
    </message>
    <message>
        <source>{} is earlier than the line before; expected times in driving order</source>
        <translation>{} ist früher als die Zeile davor; erwartet werden Zeiten in der Reihenfolge des Fahrens</translation>
    </message>
    <message>
        <source>{} is frozen</source>
        <translation>{} ist eingefroren</translation>
    </message>
    <message>
        <source>{} is given already among these runs; expected another number</source>
        <translation>{} gibt es schon unter diesen Fahrten; erwartet wird eine andere Nummer</translation>
    </message>
    <message>
        <source>{} is given already in the study; expected another number</source>
        <translation>{} gibt es schon in der Studie; erwartet wird eine andere Nummer</translation>
    </message>
    <message>
        <source>{} is given already on line {}; expected another number</source>
        <translation>{} gibt es schon in Zeile {}; erwartet wird eine andere Nummer</translation>
    </message>
    <message>
        <source>{} is given for a counted run; expected status &apos;discarded&apos;, or no reason</source>
        <translation>{} steht bei einer gewerteten Fahrt; erwartet wird der Status „discarded“ oder kein Grund</translation>
    </message>
    <message>
        <source>{} is impossible; expected a consumption from 0.0001 to 1000000 per 100 km</source>
        <translation>{} ist unmöglich; erwartet wird ein Verbrauch von 0,0001 bis 1000000 je 100 km</translation>
    </message>
    <message>
        <source>{} is impossible; expected {}</source>
        <translation>{} ist unmöglich; erwartet wird {}</translation>
    </message>
    <message>
        <source>{} is in use by another program</source>
        <translation>{} ist von einem anderen Programm belegt</translation>
    </message>
    <message>
        <source>{} is in use by {}</source>
        <translation>{} ist belegt von {}</translation>
    </message>
    <message>
        <source>{} is neither a file nor a pipe; a serial port is serial:PORT,BAUD</source>
        <translation>{} ist weder Datei noch Pipe; eine serielle Schnittstelle ist serial:PORT,BAUD</translation>
    </message>
    <message>
        <source>{} is no date; expected a day like 2026-05-09</source>
        <translation>{} ist kein Datum; erwartet wird ein Tag wie 2026-05-09</translation>
    </message>
    <message>
        <source>{} is no list of marks; expected seconds and a word for each, like: 31.2 passing_traffic lorry; 80 gust</source>
        <translation>{} ist keine Liste von Marken; erwartet werden Sekunden und je ein Wort, etwa: 31.2 passing_traffic lorry; 80 gust</translation>
    </message>
    <message>
        <source>{} is no reason; expected a rule&apos;s name or &apos;other&apos;</source>
        <translation>{} ist kein Grund; erwartet wird der Name einer Regel oder „other“</translation>
    </message>
    <message>
        <source>{} is no rule</source>
        <translation>{} ist keine Regel</translation>
    </message>
    <message>
        <source>{} is no run number; expected a whole number from 1 to {}</source>
        <translation>{} ist keine Fahrtnummer; erwartet wird eine ganze Zahl von 1 bis {}</translation>
    </message>
    <message>
        <source>{} is no serial port</source>
        <translation>{} ist keine serielle Schnittstelle</translation>
    </message>
    <message>
        <source>{} is no start; expected a date and time like 2026-05-09T05:40:00 or a time of day like 05:40</source>
        <translation>{} ist kein Start; erwartet werden Datum und Uhrzeit wie 2026-05-09T05:40:00 oder eine Uhrzeit wie 05:40</translation>
    </message>
    <message>
        <source>{} is not a finite number; expected {}</source>
        <translation>{} ist keine endliche Zahl; erwartet wird {}</translation>
    </message>
    <message>
        <source>{} is not above 0; expected a number above 0</source>
        <translation>{} liegt nicht über 0; erwartet wird eine Zahl über 0</translation>
    </message>
    <message>
        <source>{} is on</source>
        <translation>{} ist an</translation>
    </message>
    <message>
        <source>{} is on another day than {} in column &apos;{}&apos;</source>
        <translation>{} ist an einem anderen Tag als {} in Spalte „{}“</translation>
    </message>
    <message>
        <source>{} is on one run alone; expected on exactly two, an out and a return run</source>
        <translation>{} steht bei nur einer Fahrt; erwartet wird es bei genau zweien, einer Hinfahrt und einer Rückfahrt</translation>
    </message>
    <message>
        <source>{} is on {} runs; expected on exactly two, an out and a return run</source>
        <translation>{} steht bei {} Fahrten; erwartet wird es bei genau zweien, einer Hinfahrt und einer Rückfahrt</translation>
    </message>
    <message>
        <source>{} is required</source>
        <translation>{} fehlt</translation>
    </message>
    <message>
        <source>{} is silent</source>
        <translation>{} schweigt</translation>
    </message>
    <message>
        <source>{} is unknown; expected &apos;counted&apos; or &apos;discarded&apos;</source>
        <translation>{} ist unbekannt; erwartet wird „counted“ oder „discarded“</translation>
    </message>
    <message>
        <source>{} is unknown; expected &apos;typed&apos; or &apos;trace&apos;</source>
        <translation>{} ist unbekannt; erwartet wird „typed“ oder „trace“</translation>
    </message>
    <message>
        <source>{} is {} now</source>
        <translation>{} ist jetzt {}</translation>
    </message>
    <message>
        <source>{} km</source>
        <translation>{} km</translation>
    </message>
    <message>
        <source>{} km/h</source>
        <translation>{} km/h</translation>
    </message>
    <message>
        <source>{} less</source>
        <translation>{} weniger</translation>
    </message>
    <message>
        <source>{} less and {} more</source>
        <translation>{} weniger und {} mehr</translation>
    </message>
    <message>
        <source>{} less to {} more</source>
        <translation>{} weniger bis {} mehr</translation>
    </message>
    <message>
        <source>{} line could not be read</source>
        <translation>{} Zeile nicht lesbar</translation>
    </message>
    <message>
        <source>{} line that could not be read</source>
        <translation>{} Zeile, die nicht zu lesen war</translation>
    </message>
    <message>
        <source>{} lines could not be read</source>
        <translation>{} Zeilen nicht lesbar</translation>
    </message>
    <message>
        <source>{} lines that could not be read</source>
        <translation>{} Zeilen, die nicht zu lesen waren</translation>
    </message>
    <message>
        <source>{} may be minutes and seconds or hours and minutes; expected h:mm:ss, or a header like &apos;Duration (min:s)&apos;</source>
        <translation>{} kann Minuten und Sekunden oder Stunden und Minuten bedeuten; erwartet wird h:mm:ss oder eine Überschrift wie „Dauer (min:s)“</translation>
    </message>
    <message>
        <source>{} may have the day first or the month first; expected to be told which: --dates day-first or --dates month-first</source>
        <translation>bei {} kann der Tag oder der Monat vorn stehen; bitte sagen, was gilt: --dates day-first (Tag) oder --dates month-first (Monat)</translation>
    </message>
    <message>
        <source>{} min</source>
        <translation>{} min</translation>
    </message>
    <message>
        <source>{} minutes a pair; more than 0 is needed, at most 100000</source>
        <translation>{} Minuten je Paar; nötig ist mehr als 0, höchstens 100000</translation>
    </message>
    <message>
        <source>{} minutes a switch; 0 to 100000 are permitted</source>
        <translation>{} Minuten je Wechsel; erlaubt sind 0 bis 100000</translation>
    </message>
    <message>
        <source>{} more</source>
        <translation>{} mehr</translation>
    </message>
    <message>
        <source>{} move it down</source>
        <translation>{} verschieben ihn nach unten</translation>
    </message>
    <message>
        <source>{} move it up</source>
        <translation>{} verschieben den Effekt nach oben</translation>
    </message>
    <message>
        <source>{} moves it down</source>
        <translation>{} verschiebt ihn nach unten</translation>
    </message>
    <message>
        <source>{} moves it up</source>
        <translation>{} verschiebt den Effekt nach oben</translation>
    </message>
    <message>
        <source>{} mph</source>
        <translation>{} mph</translation>
    </message>
    <message>
        <source>{} not in {}</source>
        <translation>{} ist keines von {}</translation>
    </message>
    <message>
        <source>{} of line {} as its date</source>
        <translation>{} aus Zeile {} als Datum</translation>
    </message>
    <message>
        <source>{} of line {} in table {}</source>
        <translation>{} von Zeile {} der Tabelle {}</translation>
    </message>
    <message>
        <source>{} of run {} in table {}</source>
        <translation>{} von Fahrt {} der Tabelle {}</translation>
    </message>
    <message>
        <source>{} or {}</source>
        <translation>{} oder {}</translation>
    </message>
    <message>
        <source>{} pairs a block</source>
        <translation>{} Paaren je Block</translation>
    </message>
    <message>
        <source>{} pairs a block; 1 to {} are permitted</source>
        <translation>{} Paare je Block; erlaubt sind 1 bis {}</translation>
    </message>
    <message>
        <source>{} pairs: {}</source>
        <translation>{} Paare: {}</translation>
    </message>
    <message>
        <source>{} pairs; Bonferroni interval {}.</source>
        <translation>{} Paare; Bonferroni-Intervall {}.</translation>
    </message>
    <message>
        <source>{} parts are no run of the study; expected --configuration NAME to add what is new</source>
        <translation>{} Teile sind keine Fahrt der Studie; erwartet wird --configuration NAME, um Neues hinzuzufügen</translation>
    </message>
    <message>
        <source>{} port {} cannot be reached: {}</source>
        <translation>{} Port {} ist nicht erreichbar: {}</translation>
    </message>
    <message>
        <source>{} port {} closed the connection</source>
        <translation>{} Port {} hat die Verbindung geschlossen</translation>
    </message>
    <message>
        <source>{} read 0{} while the device gave power</source>
        <translation>{} auf 0{}, während das Gerät Leistung abgab</translation>
    </message>
    <message>
        <source>{} reading</source>
        <translation>{} Messwert</translation>
    </message>
    <message>
        <source>{} readings</source>
        <translation>{} Messwerte</translation>
    </message>
    <message>
        <source>{} reads 0</source>
        <translation>{} zeigt 0</translation>
    </message>
    <message>
        <source>{} reconnect</source>
        <translation>{} neue Verbindung</translation>
    </message>
    <message>
        <source>{} reconnects</source>
        <translation>{} neue Verbindungen</translation>
    </message>
    <message>
        <source>{} requires {}</source>
        <translation>{} braucht {}</translation>
    </message>
    <message>
        <source>{} row</source>
        <translation>{} Zeile</translation>
    </message>
    <message>
        <source>{} row with too few cells</source>
        <translation>{} Zeile mit zu wenigen Zellen</translation>
    </message>
    <message>
        <source>{} row with too many cells</source>
        <translation>{} Zeile mit zu vielen Zellen</translation>
    </message>
    <message>
        <source>{} row without a readable time left out</source>
        <translation>{} Zeile ohne lesbare Zeit weggelassen</translation>
    </message>
    <message>
        <source>{} rows</source>
        <translation>{} Zeilen</translation>
    </message>
    <message>
        <source>{} rows with too few cells</source>
        <translation>{} Zeilen mit zu wenigen Zellen</translation>
    </message>
    <message>
        <source>{} rows with too many cells</source>
        <translation>{} Zeilen mit zu vielen Zellen</translation>
    </message>
    <message>
        <source>{} rows without a readable time left out</source>
        <translation>{} Zeilen ohne lesbare Zeit weggelassen</translation>
    </message>
    <message>
        <source>{} run is discarded; none of them can be put back.</source>
        <translation>{} Fahrt ist verworfen; sie kann nicht wieder gewertet werden.</translation>
    </message>
    <message>
        <source>{} run of the sheet was in the study already, with the same start, configuration, direction and consumption, and is there twice now: run {}; &apos;bothways undo&apos; takes the import back</source>
        <translation>{} Fahrt des Blatts war schon in der Studie, mit gleichem Start, gleicher Konfiguration, Richtung und gleichem Verbrauch, und ist jetzt zweimal da: Fahrt {}; „bothways undo“ nimmt den Import zurück</translation>
    </message>
    <message>
        <source>{} runs are discarded; none of them can be put back.</source>
        <translation>{} Fahrten sind verworfen; keine kann wieder gewertet werden.</translation>
    </message>
    <message>
        <source>{} runs are named; expected two, like 3 6</source>
        <translation>{} Fahrten sind genannt; erwartet werden zwei, wie 3 6</translation>
    </message>
    <message>
        <source>{} runs of the sheet were in the study already, with the same start, configuration, direction and consumption, and are there twice now: runs {}; &apos;bothways undo&apos; takes the import back</source>
        <translation>{} Fahrten des Blatts waren schon in der Studie, mit gleichem Start, gleicher Konfiguration, Richtung und gleichem Verbrauch, und sind jetzt zweimal da: Fahrten {}; „bothways undo“ nimmt den Import zurück</translation>
    </message>
    <message>
        <source>{} runs, {} counted, {} discarded; {} pairs in {} blocks.</source>
        <translation>Fahrten: {}, davon {} gewertet und {} verworfen; Paare: {}, Blöcke: {}.</translation>
    </message>
    <message>
        <source>{} sentence with a wrong checksum left out</source>
        <translation>{} Satz mit falscher Prüfsumme weggelassen</translation>
    </message>
    <message>
        <source>{} sentences with a wrong checksum left out</source>
        <translation>{} Sätze mit falscher Prüfsumme weggelassen</translation>
    </message>
    <message>
        <source>{} silence</source>
        <translation>{} Mal geschwiegen</translation>
    </message>
    <message>
        <source>{} silences</source>
        <translation>{} Mal geschwiegen</translation>
    </message>
    <message>
        <source>{} studies together</source>
        <translation>{} Studien zusammen</translation>
    </message>
    <message>
        <source>{} ties runs of two blocks; expected two of one block, without a switch or a new day between them</source>
        <translation>{} verbindet Fahrten zweier Blöcke; erwartet werden zwei aus einem Block, ohne Wechsel und ohne neuen Tag dazwischen</translation>
    </message>
    <message>
        <source>{} ties two runs in one direction; expected an out and a return run</source>
        <translation>{} verbindet zwei Fahrten in einer Richtung; erwartet werden eine Hinfahrt und eine Rückfahrt</translation>
    </message>
    <message>
        <source>{} time given twice</source>
        <translation>{} doppelte Zeit</translation>
    </message>
    <message>
        <source>{} time that went backwards</source>
        <translation>{} Zeit, die rückwärts lief</translation>
    </message>
    <message>
        <source>{} time without a position</source>
        <translation>{} Zeitpunkt ohne Position</translation>
    </message>
    <message>
        <source>{} times given twice</source>
        <translation>{} doppelte Zeiten</translation>
    </message>
    <message>
        <source>{} times that went backwards</source>
        <translation>{} Zeiten, die rückwärts liefen</translation>
    </message>
    <message>
        <source>{} times without a position</source>
        <translation>{} Zeitpunkte ohne Position</translation>
    </message>
    <message>
        <source>{} to {} less</source>
        <translation>{} bis {} weniger</translation>
    </message>
    <message>
        <source>{} to {} more</source>
        <translation>{} bis {} mehr</translation>
    </message>
    <message>
        <source>{} to {}</source>
        <comment>interval</comment>
        <translation>{} bis {}</translation>
    </message>
    <message>
        <source>{} track point that is nowhere on Earth left out</source>
        <translation>{} Wegpunkt, der nirgends auf der Erde liegt, weggelassen</translation>
    </message>
    <message>
        <source>{} track points and none with a time and a place; expected a recorded track</source>
        <translation>{} Wegpunkte und keiner mit Zeit und Ort; erwartet wird ein aufgezeichneter Weg</translation>
    </message>
    <message>
        <source>{} track points that are nowhere on Earth left out</source>
        <translation>{} Wegpunkte, die nirgends auf der Erde liegen, weggelassen</translation>
    </message>
    <message>
        <source>{} used {} energy than {} ({} interval: {}){}.</source>
        <translation>{} verbrauchte {} Energie als {} ({}-Intervall: {}){}.</translation>
    </message>
    <message>
        <source>{} used {} fuel than {} ({} interval: {}){}.</source>
        <translation>{} verbrauchte {} Kraftstoff als {} ({}-Intervall: {}){}.</translation>
    </message>
    <message>
        <source>{} was reset</source>
        <translation>{} wurde zurückgesetzt</translation>
    </message>
    <message>
        <source>{} was unplugged</source>
        <translation>{} wurde abgezogen</translation>
    </message>
    <message>
        <source>{} with {} leaves {} degrees of freedom; at least {} are needed, so more pairs</source>
        <translation>{} mit {} lässt {} Freiheitsgrade; nötig sind mindestens {}, also mehr Paare</translation>
    </message>
    <message>
        <source>{} with {} pair a block: {}, {} h on the road, {}.</source>
        <translation>{} mit {} Paar je Block: {}, {} h auf der Straße, {}.</translation>
    </message>
    <message>
        <source>{} with {} pairs a block would still not detect {} %: want less, or find less noise</source>
        <translation>{} mit {} Paaren je Block würde {} % immer noch nicht nachweisen: Verlangen Sie weniger, oder finden Sie weniger Rauschen</translation>
    </message>
    <message>
        <source>{} with {} pairs a block: {} pairs, {} h on the road, {} km. With a noise of {} % a pair this day can show {} % or more.</source>
        <translation>{} mit {} Paaren je Block: Paare: {}, {} h auf der Straße, {} km. Bei einem Rauschen von {} % je Paar kann dieser Tag {} % oder mehr zeigen.</translation>
    </message>
    <message>
        <source>{} with {} pairs a block: {}, {} h on the road, {}.</source>
        <translation>{} mit {} Paaren je Block: {}, {} h auf der Straße, {}.</translation>
    </message>
    <message>
        <source>{} {}</source>
        <translation>{} {}</translation>
    </message>
    <message>
        <source>{} {} -&gt; {}</source>
        <translation>{} {} → {}</translation>
    </message>
    <message>
        <source>{} {} {}</source>
        <translation>{} {} {}</translation>
    </message>
    <message>
        <source>{} {}</source>
        <comment>two sentences</comment>
        <translation>{} {}</translation>
    </message>
    <message>
        <source>{}, noted by hand{}{}</source>
        <translation>{}, von Hand notiert{}{}</translation>
    </message>
    <message>
        <source>{}, run {}</source>
        <translation>{}, Fahrt {}</translation>
    </message>
    <message>
        <source>{}, {}</source>
        <translation>{}, {}</translation>
    </message>
    <message>
        <source>{}, {} recording</source>
        <translation>{}, {} Aufzeichnung</translation>
    </message>
    <message>
        <source>{}, {} recordings</source>
        <translation>{}, {} Aufzeichnungen</translation>
    </message>
    <message>
        <source>{}. {}</source>
        <comment>an alarm, and what to do about it</comment>
        <translation>{}. {}</translation>
    </message>
    <message>
        <source>{}: At Most {} required but received {}</source>
        <translation>{}: höchstens {} erwartet, {} angegeben</translation>
    </message>
    <message>
        <source>{}: At least {} required but received {}</source>
        <translation>{}: mindestens {} erwartet, {} angegeben</translation>
    </message>
    <message>
        <source>{}: Should be true/false or a number</source>
        <translation>{}: erwartet wird true, false oder eine Zahl</translation>
    </message>
    <message>
        <source>{}: begins where a gap of {} s in the recording ends, from {} s to {} s; it may have been longer</source>
        <translation>{}: beginnt, wo eine Lücke von {} s in der Aufzeichnung endet, von {} s bis {} s; sie kann länger gewesen sein</translation>
    </message>
    <message>
        <source>{}: ends where the recording has a gap of {} s, from {} s to {} s; it may have been longer</source>
        <translation>{}: endet, wo die Aufzeichnung eine Lücke von {} s hat, von {} s bis {} s; sie kann länger gewesen sein</translation>
    </message>
    <message>
        <source>{}: from {} s to {} s</source>
        <translation>{}: von {} s bis {} s</translation>
    </message>
    <message>
        <source>{}: nothing to change</source>
        <translation>{}: nichts zu ändern</translation>
    </message>
    <message>
        <source>{}: overruled &apos;{}&apos;: {}</source>
        <translation>{}: „{}“ zurückgewiesen: {}</translation>
    </message>
    <message>
        <source>{}: perhaps too far for chance ({}). Read what was noted for its runs; discard one only for a reason that you would accept if the result went the other way.</source>
        <translation>{}: vielleicht zu weit für einen Zufall ({}). Lesen Sie, was zu seinen Fahrten notiert wurde; verwerfen Sie eine nur aus einem Grund, den Sie auch beim umgekehrten Ergebnis gelten ließen.</translation>
    </message>
    <message>
        <source>{}: the finding &apos;{}&apos; stands again</source>
        <translation>{}: der Befund „{}“ gilt wieder</translation>
    </message>
    <message>
        <source>{}: the recording has a gap of {} s in it, from {} s to {} s</source>
        <translation>{}: die Aufzeichnung hat darin eine Lücke von {} s, von {} s bis {} s</translation>
    </message>
    <message>
        <source>{}: too far for chance ({}). Read what was noted for its runs; discard one only for a reason that you would accept if the result went the other way.</source>
        <translation>{}: zu weit für einen Zufall ({}). Lesen Sie, was zu seinen Fahrten notiert wurde; verwerfen Sie eine nur aus einem Grund, den Sie auch beim umgekehrten Ergebnis gelten ließen.</translation>
    </message>
    <message>
        <source>{}: was not stopped; it is there up to its last second</source>
        <translation>{}: wurde nicht beendet; bis zur letzten Sekunde ist sie da</translation>
    </message>
    <message>
        <source>{}: {}</source>
        <translation>{}: {}</translation>
    </message>
    <message>
        <source>{}: {} % ({} degrees of freedom)</source>
        <translation>{}: {} % ({} Freiheitsgrade)</translation>
    </message>
    <message>
        <source>{}: {} %, {} MB/s</source>
        <translation>{}: {} %, {} MB/s</translation>
    </message>
    <message>
        <source>{}: {} ({} interval: {}).</source>
        <translation>{}: {} ({}-Intervall: {}).</translation>
    </message>
    <message>
        <source>{}: {} counted, {} discarded</source>
        <translation>{}: {} gewertet, {} verworfen</translation>
    </message>
    <message>
        <source>{}: {} counted, {} discarded; without a partner: {}</source>
        <translation>{}: {} gewertet, {} verworfen; ohne Partner: {}</translation>
    </message>
    <message>
        <source>{}: {} given; a number above 0 is expected</source>
        <translation>{}: {} angegeben; erwartet wird eine Zahl über 0</translation>
    </message>
    <message>
        <source>{}: {} of its {} runs are runs of {}, too, and count twice</source>
        <translation>{}: {} ihrer {} Fahrten sind auch Fahrten von {} und zählen doppelt</translation>
    </message>
    <message>
        <source>{}: {} required {} missing</source>
        <translation>{0}: Es fehlt {2} (erwartet: {1})</translation>
    </message>
    <message>
        <source>{}: {} run</source>
        <translation>{}: {} Fahrt</translation>
    </message>
    <message>
        <source>{}: {} runs</source>
        <translation>{}: {} Fahrten</translation>
    </message>
    <message>
        <source>{}: {} {} now, {} before: more than {} apart</source>
        <translation>{}: jetzt {} {}, vorher {}: mehr als {} auseinander</translation>
    </message>
    <message>
        <source>{}: {}</source>
        <comment>a part of the device, and what it did</comment>
        <translation>{}: {}</translation>
    </message>
    <message>
        <source>{}: {}</source>
        <comment>how grave an alarm is, and the alarm</comment>
        <translation>{}: {}</translation>
    </message>
    <message>
        <source>{}: {}, {}</source>
        <translation>{}: {}, {}</translation>
    </message>
    <message>
        <source>{}: {}, {}, {} given; each must be above 0 and at most 1</source>
        <translation>{}: {} / {} / {} angegeben; jeder Wert muss über 0 und höchstens 1 sein</translation>
    </message>
    <message>
        <source>{}: {}, {}, {} given; low, middle and high must ascend</source>
        <translation>{}: {} / {} / {} angegeben; niedrig, mittel und hoch müssen aufsteigen</translation>
    </message>
    <message>
        <source>{}: “{}” is no number; expected degrees like 47.5061, south and west with a minus</source>
        <translation>{}: „{}“ ist keine Zahl; erwartet werden Grad wie 47,5061, Süd und West mit Minus</translation>
    </message>
    <message>
        <source>{}; among {} pairs that is ordinary ({}).</source>
        <translation>{}; unter {} Paaren ist das gewöhnlich ({}).</translation>
    </message>
    <message>
        <source>{}; did you mean &apos;{}&apos;?</source>
        <translation>{}; war „{}“ gemeint?</translation>
    </message>
    <message>
        <source>{}; expected a recording in CSV, GPX or NMEA 0183</source>
        <translation>{}; erwartet wird eine Aufzeichnung in CSV, GPX oder NMEA 0183</translation>
    </message>
    <message>
        <source>{}; like {}</source>
        <translation>{}; zum Beispiel {}</translation>
    </message>
    <message>
        <source>{}; not to be had from these runs.</source>
        <translation>{}; mit diesen Fahrten nicht zu gewinnen.</translation>
    </message>
    <message>
        <source>{}; nothing was changed</source>
        <translation>{}; nichts wurde geändert</translation>
    </message>
    <message>
        <source>{}; reconnects: {}, silences: {}, unreadable lines: {}</source>
        <translation>{}; neu verbunden: {}, Pausen: {}, unlesbare Zeilen: {}</translation>
    </message>
    <message>
        <source>{}; the study is as it was</source>
        <translation>{}; die Studie ist, wie sie war</translation>
    </message>
    <message>
        <source>{}; {}</source>
        <translation>{}; {}</translation>
    </message>
    <message>
        <source>{}=&apos;{}&apos;</source>
        <translation>{}=„{}“</translation>
    </message>
    <message>
        <source>{}{}{}</source>
        <translation>{}{}{}</translation>
    </message>
    <message>
        <source>°</source>
        <comment>unit</comment>
        <translation>°</translation>
    </message>
    <message>
        <source>°C</source>
        <comment>unit</comment>
        <translation>°C</translation>
    </message>
</context>
</TS>
