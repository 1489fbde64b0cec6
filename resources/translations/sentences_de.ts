<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Sentences</name>
    <message>
        <source></source>
        <translation type="unfinished"></translation>
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
        <source>,</source>
        <comment>between thousands</comment>
        <translation>.</translation>
    </message>
    <message>
        <source>.</source>
        <comment>decimal sign</comment>
        <translation>,</translation>
    </message>
    <message>
        <source>Input/output error</source>
        <translation>Ein-/Ausgabefehler</translation>
    </message>
    <message>
        <source>Is a directory</source>
        <translation>ist ein Verzeichnis</translation>
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
        <source>Permission denied</source>
        <translation>keine Berechtigung</translation>
    </message>
    <message>
        <source>Read-only file system</source>
        <translation>Dateisystem ist schreibgeschützt</translation>
    </message>
    <message>
        <source>accessories</source>
        <comment>column</comment>
        <translation>Nebenverbraucher an</translation>
    </message>
    <message>
        <source>accessory_change</source>
        <comment>reason</comment>
        <translation>Verbraucherlast geändert</translation>
    </message>
    <message>
        <source>accessory_timer</source>
        <comment>reason</comment>
        <translation>Zeitschaltung schaltete ab</translation>
    </message>
    <message>
        <source>accessory_w</source>
        <comment>column</comment>
        <translation>Nebenverbraucherlast (W)</translation>
    </message>
    <message>
        <source>adjusted</source>
        <comment>reason</comment>
        <translation>während der Fahrt verstellt</translation>
    </message>
    <message>
        <source>battery_balance</source>
        <comment>reason</comment>
        <translation>Batterie nicht ausgeglichen</translation>
    </message>
    <message>
        <source>battery_v_end</source>
        <comment>column</comment>
        <translation>Batterie am Ende (V)</translation>
    </message>
    <message>
        <source>battery_v_start</source>
        <comment>column</comment>
        <translation>Batterie am Anfang (V)</translation>
    </message>
    <message>
        <source>column &apos;{}&apos;</source>
        <translation>Spalte „{}“</translation>
    </message>
    <message>
        <source>column {}</source>
        <translation>Spalte {}</translation>
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
        <source>consumption</source>
        <comment>column</comment>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>control</source>
        <comment>column</comment>
        <translation>Kontrollfahrzeug</translation>
    </message>
    <message>
        <source>counted</source>
        <comment>status</comment>
        <translation>gewertet</translation>
    </message>
    <message>
        <source>direction {} -&gt; {}</source>
        <translation>Richtung {} → {}</translation>
    </message>
    <message>
        <source>direction</source>
        <comment>column</comment>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>discarded</source>
        <comment>status</comment>
        <translation>verworfen</translation>
    </message>
    <message>
        <source>distance_km</source>
        <comment>column</comment>
        <translation>Strecke (km)</translation>
    </message>
    <message>
        <source>drive_slip</source>
        <comment>reason</comment>
        <translation>Antrieb rutschte</translation>
    </message>
    <message>
        <source>duration_s</source>
        <comment>column</comment>
        <translation>Dauer (s)</translation>
    </message>
    <message>
        <source>equivalent</source>
        <comment>verdict</comment>
        <translation>gleichwertig</translation>
    </message>
    <message>
        <source>evidence</source>
        <comment>column</comment>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>fuel_gal_us</source>
        <comment>unit</comment>
        <translation>gal (US)</translation>
    </message>
    <message>
        <source>fuel_l</source>
        <comment>unit</comment>
        <translation>l</translation>
    </message>
    <message>
        <source>humidity_pct</source>
        <comment>column</comment>
        <translation>Luftfeuchte (%)</translation>
    </message>
    <message>
        <source>interrupted</source>
        <comment>reason</comment>
        <translation>Fahrt unterbrochen</translation>
    </message>
    <message>
        <source>km_per_l</source>
        <comment>unit</comment>
        <translation>km/l</translation>
    </message>
    <message>
        <source>kwh_per_100km</source>
        <comment>unit</comment>
        <translation>kWh/100 km</translation>
    </message>
    <message>
        <source>l_per_100km</source>
        <comment>unit</comment>
        <translation>l/100 km</translation>
    </message>
    <message>
        <source>less</source>
        <comment>verdict</comment>
        <translation>weniger</translation>
    </message>
    <message>
        <source>load_lost</source>
        <comment>reason</comment>
        <translation>Last verloren</translation>
    </message>
    <message>
        <source>made by Bothways {}</source>
        <translation>angelegt von Bothways {}</translation>
    </message>
    <message>
        <source>marks</source>
        <comment>column</comment>
        <translation>Marken</translation>
    </message>
    <message>
        <source>more</source>
        <comment>verdict</comment>
        <translation>mehr</translation>
    </message>
    <message>
        <source>mpg_imp</source>
        <comment>unit</comment>
        <translation>mpg (imp.)</translation>
    </message>
    <message>
        <source>mpg_us</source>
        <comment>unit</comment>
        <translation>mpg (US)</translation>
    </message>
    <message>
        <source>new run {}</source>
        <translation>neue Fahrt {}</translation>
    </message>
    <message>
        <source>none</source>
        <comment>verdict</comment>
        <translation>kein Urteil</translation>
    </message>
    <message>
        <source>not_cruising</source>
        <comment>reason</comment>
        <translation>noch nicht auf Tempo</translation>
    </message>
    <message>
        <source>notes</source>
        <comment>column</comment>
        <translation>Notizen</translation>
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
        <source>other columns</source>
        <comment>column</comment>
        <translation>andere Spalten</translation>
    </message>
    <message>
        <source>other</source>
        <comment>reason</comment>
        <translation>anderer Grund</translation>
    </message>
    <message>
        <source>output_drop</source>
        <comment>reason</comment>
        <translation>Leistung abgefallen</translation>
    </message>
    <message>
        <source>output_w</source>
        <comment>column</comment>
        <translation>Abgabeleistung (W)</translation>
    </message>
    <message>
        <source>overspeed</source>
        <comment>reason</comment>
        <translation>Überdrehzahl</translation>
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
        <comment>column</comment>
        <translation>Paar</translation>
    </message>
    <message>
        <source>passing_traffic</source>
        <comment>reason</comment>
        <translation>Verkehr</translation>
    </message>
    <message>
        <source>pressure_hpa</source>
        <comment>column</comment>
        <translation>Luftdruck (hPa)</translation>
    </message>
    <message>
        <source>reason</source>
        <comment>column</comment>
        <translation>Grund</translation>
    </message>
    <message>
        <source>road_speed</source>
        <comment>reason</comment>
        <translation>Zielgeschwindigkeit verfehlt</translation>
    </message>
    <message>
        <source>rotor_rpm_max</source>
        <comment>column</comment>
        <translation>höchste Rotordrehzahl (1/min)</translation>
    </message>
    <message>
        <source>run {}</source>
        <translation>Fahrt {}</translation>
    </message>
    <message>
        <source>run {}:</source>
        <translation>Fahrt {}:</translation>
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
        <source>run</source>
        <comment>column</comment>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>runs {}</source>
        <translation>Fahrten {}</translation>
    </message>
    <message>
        <source>same_run_twice</source>
        <comment>reason</comment>
        <translation>Fahrt doppelt</translation>
    </message>
    <message>
        <source>sensor_lost</source>
        <comment>reason</comment>
        <translation>Sensor ausgefallen</translation>
    </message>
    <message>
        <source>setting</source>
        <comment>column</comment>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>setting_changed</source>
        <comment>reason</comment>
        <translation>Einstellung geändert</translation>
    </message>
    <message>
        <source>setting_mismatch</source>
        <comment>reason</comment>
        <translation>Einstellung weicht ab</translation>
    </message>
    <message>
        <source>speed_kmh</source>
        <comment>column</comment>
        <translation>Geschwindigkeit (km/h)</translation>
    </message>
    <message>
        <source>start</source>
        <comment>column</comment>
        <translation>Start</translation>
    </message>
    <message>
        <source>status</source>
        <comment>column</comment>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>stretch</source>
        <comment>reason</comment>
        <translation>falsche Streckenlänge</translation>
    </message>
    <message>
        <source>temperature_c</source>
        <comment>column</comment>
        <translation>Temperatur (°C)</translation>
    </message>
    <message>
        <source>trace</source>
        <comment>column</comment>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>trace_ends_early</source>
        <comment>reason</comment>
        <translation>Aufzeichnung endet zu früh</translation>
    </message>
    <message>
        <source>undecided</source>
        <comment>verdict</comment>
        <translation>unentschieden</translation>
    </message>
    <message>
        <source>vibration</source>
        <comment>reason</comment>
        <translation>Vibration</translation>
    </message>
    <message>
        <source>warming_up</source>
        <comment>reason</comment>
        <translation>Warmlauf</translation>
    </message>
    <message>
        <source>wind_from_deg</source>
        <comment>column</comment>
        <translation>Wind aus (°)</translation>
    </message>
    <message>
        <source>wind_ms</source>
        <comment>column</comment>
        <translation>Wind (m/s)</translation>
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
        <source>{} channels</source>
        <translation>{} Kanäle</translation>
    </message>
    <message>
        <source>{} channels</source>
        <comment>a single one</comment>
        <translation>{} Kanal</translation>
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
        <source>{} more</source>
        <translation>{} mehr</translation>
    </message>
    <message>
        <source>{} or {}</source>
        <translation>{} oder {}</translation>
    </message>
    <message>
        <source>{} pairs: {}</source>
        <translation>{} Paare: {}</translation>
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
        <source>{} {}</source>
        <translation>{} {}</translation>
    </message>
    <message>
        <source>{} {} -&gt; {}</source>
        <translation>{} {} → {}</translation>
    </message>
    <message>
        <source>{}, {}</source>
        <translation>{}, {}</translation>
    </message>
    <message>
        <source>{}: {}</source>
        <translation>{}: {}</translation>
    </message>
    <message>
        <source>{}: {} rows, {}</source>
        <translation>{}: {} Zeilen, {}</translation>
    </message>
    <message>
        <source>{}: {} rows, {}, run {}</source>
        <translation>{}: {} Zeilen, {}, Fahrt {}</translation>
    </message>
    <message>
        <source>{}: {} runs</source>
        <translation>{}: {} Fahrten</translation>
    </message>
    <message>
        <source>{}: {} runs</source>
        <comment>a single one</comment>
        <translation>{}: {} Fahrt</translation>
    </message>
    <message>
        <source>{}: {}, {}</source>
        <translation>{}: {}, {}</translation>
    </message>
    <message>
        <source>{}; the study is as it was</source>
        <translation type="unfinished"></translation>
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
</context>
</TS>
