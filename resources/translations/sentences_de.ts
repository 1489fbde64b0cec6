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
        <source>column &apos;{}&apos;</source>
        <translation>Spalte „{}“</translation>
    </message>
    <message>
        <source>column {}</source>
        <translation>Spalte {}</translation>
    </message>
    <message>
        <source>new run {}</source>
        <translation>neue Fahrt {}</translation>
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
        <source>run {}</source>
        <translation>Fahrt {}</translation>
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
        <source>{}, {}</source>
        <translation>{}, {}</translation>
    </message>
</context>
</TS>
