#!/usr/bin/env python3
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes the spreadsheets beside it. They are written by hand, part by part, in the forms that the two
standards allow and that people's programs use: ISO/IEC 29500 (.xlsx), ISO/IEC 26300 (.ods), and text.
The files are committed; run this again only to change them. Nothing but Python's own library is needed.

What must come of each is in tests/storage/sheet/spreadsheets_test.cpp. Most hold the same eight runs, kRuns below."""
import datetime
import os
import zipfile
from xml.sax.saxutils import escape, quoteattr

HERE = os.path.dirname(os.path.abspath(__file__))

# configuration, direction, minutes after 05:40 on 2026-05-09, L/100 km, km, °C
RUNS = [
    ("A", "out", 0, "8.41", "5.2", "12.5"),
    ("A", "return", 7, "8.22", "5.2", "12.6"),
    ("A", "out", 14, "8.44", "5.2", "12.8"),
    ("A", "return", 21, "8.19", "5.2", "13"),
    ("B", "out", 63, "8.47", "5.2", "13.5"),
    ("B", "return", 70, "8.31", "5.2", "13.6"),
    ("B", "out", 77, "8.52", "5.2", "14"),
    ("B", "return", 84, "8.28", "5.2", "14.1"),
]


def clock(minutes, seconds=True):
    hour, minute = divmod(5 * 60 + 40 + minutes, 60)
    return f"{hour:02}:{minute:02}" + (":00" if seconds else "")


def half_day(minutes):
    hour, minute = divmod(5 * 60 + 40 + minutes, 60)
    return f"{hour % 12 or 12}:{minute:02} {'AM' if hour < 12 else 'PM'}"


def comma(number):
    return number.replace(".", ",")


def text(name, content, encoding="utf-8", end="\n"):
    with open(os.path.join(HERE, name), "wb") as file:
        file.write(content.replace("\n", end).encode(encoding))


def archive(name, parts):
    """Each part stored or deflated with a fixed time, so that the same bytes come out again."""
    with zipfile.ZipFile(os.path.join(HERE, name), "w", zipfile.ZIP_DEFLATED) as out:
        for path, content in parts:
            info = zipfile.ZipInfo(path, (2026, 5, 9, 12, 0, 0))
            info.compress_type = zipfile.ZIP_STORED if path == "mimetype" else zipfile.ZIP_DEFLATED
            info.external_attr = 0o644 << 16
            out.writestr(info, content)


# ---------------------------------------------------------------- text

def texts():
    header = "configuration,direction,start,l_per_100km"
    # United States
    text("us_dates_and_halves.csv",
         "Trip,Date,Time,Config,Direction,Distance (mi),MPG (US),Temp (°F)\n" + "".join(
             f"{i + 1},5/13/2026,{half_day(m)},{c},{d},3.2,{28 + i * 0.1:.1f},{55 + i}\n"
             for i, (c, d, m, *_) in enumerate(RUNS)), end="\r\n")
    text("us_unclear_dates.csv",
         "Config,Direction,Start,MPG (US)\n" + "".join(
             f"{c},{d},5/9/2026 {half_day(m)},{28 + i * 0.1:.1f}\n" for i, (c, d, m, *_) in enumerate(RUNS)))
    text("us_thousands.csv",
         "Config,Direction,Start,Duration (s),\"Fuel (mL)\",Distance (km)\n" + "".join(
             f"{c},{d},2026-05-09 {clock(m)}," + ("998" if i % 2 else '"1,008"') + f',"1,{200 + i}.5",15.2\n'
             for i, (c, d, m, *_) in enumerate(RUNS)))
    # United Kingdom
    text("uk_day_first.csv",
         "Run No,Date,Start time,Variant,Way,MPG (UK),Remarks\n" + "".join(
             f"{i + 1},{25 if i < 4 else 26}/05/2026,{clock(m, False)},{c},{d},{33 + i * 0.1:.1f},\n"
             for i, (c, d, m, *_) in enumerate(RUNS)), end="\r\n")
    # Germany
    german = ("Testfahrten Dachgenerator;;;;;;;\nFahrer: Max Müller;;;;;;;\n\n"
              "Nr.;Datum;Uhrzeit;Konfiguration;Richtung;Strecke;Verbrauch [l/100 km];Außentemperatur\n"
              ";;hh:mm;;;km;;°C\n" + "".join(
                  f"{i + 1};09.05.2026;{clock(m, False)};{'ohne' if c == 'A' else 'mit'};"
                  f"{'hin' if d == 'out' else 'zurück'};{comma(km)};{comma(v)};{comma(t)}\n"
                  for i, (c, d, m, v, km, t) in enumerate(RUNS)) +
              ";;;;Mittelwert;5,2;8,36;\n;;;;;;;\nGemessen mit dem Bordcomputer;;;;;;;\n")
    text("de_semicolons.csv", "sep=;\n" + german, end="\r\n")
    text("de_windows_1252.csv", german, "cp1252", "\r\n")
    text("de_utf16.tsv", "\ufeff" + german.replace(";", "\t"), "utf-16-le", "\r\n")
    text("de_utf16_big_end.tsv", "\ufeff" + german.replace(";", "\t"), "utf-16-be", "\r\n")
    text("de_months_in_words.csv",
         "Zeitpunkt;Variante;Fahrtrichtung;Verbrauch l/100km;Dauer (min:s)\n" + "".join(
             f"9. Mai 2026 {clock(m, False)} Uhr;{c};{d};{comma(v)};3:{30 + i}\n"
             for i, (c, d, m, v, *_) in enumerate(RUNS)))
    text("de_day_in_title.csv",
         "Testfahrten am Samstag, 9. Mai 2026\n\nUhrzeit;Konfiguration;Richtung;Verbrauch (l/100km)\n" + "".join(
             f"{clock(m, False)};{c};{d};{comma(v)}\n" for c, d, m, v, *_ in RUNS))
    text("two_days_in_title.csv",
         "Driven 2026-05-09,printed 2026-06-01\nStart,Configuration,Direction,L/100km\n" + "".join(
             f"{clock(m, False)},{c},{d},{v}\n" for c, d, m, v, *_ in RUNS))
    text("de_unknown_consumption.csv",
         "Datum;Uhrzeit;Konfiguration;Richtung;Verbrauch\n" + "".join(
             f"09.05.2026;{clock(m, False)};{c};{d};{comma(v)}\n" for c, d, m, v, *_ in RUNS))
    # Switzerland
    text("ch_apostrophes.csv",
         "Datum/Uhrzeit;Konfiguration;Richtung;Kraftstoff (ml);Strecke (m)\n" + "".join(
             f"09.05.26 {clock(m, False)};{c};{d};{1000 + i * 10 - 500};5'20{i}\n"
             for i, (c, d, m, *_) in enumerate(RUNS)))
    # France
    text("fr_latin_1.csv",
         "Essai;Date;Heure de départ;Configuration;Sens;Conso (L/100 km);Durée (s);Température (°C);;Remarques\n"
         + "".join(f"{i + 1};09/05/2026;{clock(m)[:2].lstrip('0')}h{clock(m)[3:5]};{c};{d};{comma(v)};"
                   f"1 01{i};{comma(t)};;été\n" for i, (c, d, m, v, km, t) in enumerate(RUNS[:4]))
         + "".join(f"{i + 5};29/05/2026;{clock(m)[:2].lstrip('0')}h{clock(m)[3:5]};{c};{d};{comma(v)};"
                   f"1 01{i};{comma(t)};;\n" for i, (c, d, m, v, km, t) in enumerate(RUNS[4:]))
         + "Moyenne;;;;;8,36;;;;\n", "latin-1")
    # Spain
    text("es_bars.txt",
         "Prueba|Fecha y hora|Configuración|Sentido|Consumo (L/100 km)|Temperatura (°C)\n" + "".join(
             f"{i + 1}|09-05-2026 {clock(m, False)}|{c}|{d}|{comma(v)}|{comma(t)}\n"
             for i, (c, d, m, v, km, t) in enumerate(RUNS)) +
         "|13-05-2026 06:00|B|out|8,5|14\n|13-05-2026 06:07|B|return|8,3|14\nSuma|||| 66,84|\n")
    # What is refused
    text("two_tables.csv", header + "\n" + "".join(
        f"{c},{d},2026-05-09T{clock(m)},{v}\n" for c, d, m, v, *_ in RUNS) + "\n" + header + "\n" + "".join(
        f"{c},{d},2026-05-10T{clock(m)},{v}\n" for c, d, m, v, *_ in RUNS))
    # Ours, in the form that the program writes
    text("ours.csv", "run,configuration,direction,start,distance_km,l_per_100km,Temperature (°F)\n" + "".join(
        f"{i + 1},{c},{d},2026-05-09T{clock(m)},{km},{v},{t}\n" for i, (c, d, m, v, km, t) in enumerate(RUNS)))


# ---------------------------------------------------------------- .xlsx

MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
STRICT = "http://purl.oclc.org/ooxml/spreadsheetml/main"
REL = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'
# Styles by number: 0 plain, 1 a date (14), 2 a time (20), 3 "dd.mm.yyyy hh:mm", 4 per cent (9), 5 "0.00",
# 6 "[h]:mm:ss", 7 a currency whose code holds letters in quotes.
STYLES = HEAD + f"""<styleSheet xmlns="{MAIN}"><numFmts count="4"><numFmt numFmtId="164" formatCode="dd\\.mm\\.yyyy\\ hh:mm"/><numFmt
 numFmtId="165" formatCode="[h]:mm:ss;@"/><numFmt numFmtId="166" formatCode="#,##0.00\\ &quot;days&quot;"/><numFmt numFmtId="167"
 formatCode="[$-409]m/d/yy\\ h:mm\\ AM/PM;@"/></numFmts><cellStyleXfs count="1"><xf numFmtId="22"/></cellStyleXfs><cellXfs
 count="9"><xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="20"/><xf numFmtId="164"/><xf numFmtId="9"/><xf
 numFmtId="2"/><xf numFmtId="165"/><xf numFmtId="166"/><xf numFmtId="167"/></cellXfs></styleSheet>"""


def letters(column):
    name = ""
    column += 1
    while column:
        column, rest = divmod(column - 1, 26)
        name = chr(65 + rest) + name
    return name


def serial(day, minutes=0, base=datetime.date(1899, 12, 30)):
    return (day - base).days + (5 * 60 + 40 + minutes) / 1440 if minutes is not None else (day - base).days


class Strings:
    def __init__(self):
        self.known = []

    def at(self, value):
        if value not in self.known:
            self.known.append(value)
        return self.known.index(value)

    def part(self):
        items = "".join(f"<si><t xml:space=\"preserve\">{escape(s)}</t></si>" for s in self.known)
        return HEAD + f'<sst xmlns="{MAIN}" count="{len(self.known)}" uniqueCount="{len(self.known)}">{items}</sst>'


def xlsx_cell(place, value, strings):
    """None; text; a number as its text in a tuple ("n", text[, style]); ("inline", t); ("raw", xml)."""
    if value is None:
        return ""
    if isinstance(value, str):
        return f'<c r="{place}" t="s"><v>{strings.at(value)}</v></c>'
    kind = value[0]
    if kind == "n":
        style = f' s="{value[2]}"' if len(value) > 2 else ""
        return f'<c r="{place}"{style}><v>{value[1]}</v></c>'
    if kind == "inline":
        return f'<c r="{place}" t="inlineStr"><is><t>{escape(value[1])}</t></is></c>'
    return value[1].replace("@", place)


def sheet_part(rows, strings, extra="", namespace=MAIN, first=1):
    lines = ""
    for i, row in enumerate(rows):
        cells = "".join(xlsx_cell(f"{letters(j)}{i + first}", v, strings) for j, v in enumerate(row))
        if cells:
            lines += f'<row r="{i + first}">{cells}</row>'
    return HEAD + f'<worksheet xmlns="{namespace}"><sheetData>{lines}</sheetData>{extra}</worksheet>'


def xlsx(name, sheets, strings, properties="", states=(), pivots=(), more=()):
    """sheets: (name, part) in order."""
    types = (HEAD + '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default '
             'Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default '
             'Extension="xml" ContentType="application/xml"/></Types>')
    rels = HEAD + '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">'
    book = HEAD + f'<workbook xmlns="{MAIN}" xmlns:r="{REL}">{properties}<sheets>'
    leads = rels
    parts = []
    for i, (title, part) in enumerate(sheets):
        state = f' state="{states[i]}"' if i < len(states) and states[i] else ""
        book += f'<sheet name={quoteattr(title)} sheetId="{i + 1}"{state} r:id="rId{i + 1}"/>'
        leads += f'<Relationship Id="rId{i + 1}" Type="{REL}/worksheet" Target="worksheets/sheet{i + 1}.xml"/>'
        parts.append((f"xl/worksheets/sheet{i + 1}.xml", part))
        if i in pivots:
            parts.append((f"xl/worksheets/_rels/sheet{i + 1}.xml.rels", rels +
                          f'<Relationship Id="rId1" Type="{REL}/pivotTable" '
                          'Target="../pivotTables/pivotTable1.xml"/></Relationships>'))
    leads += (f'<Relationship Id="rId90" Type="{REL}/styles" Target="styles.xml"/>'
              f'<Relationship Id="rId91" Type="{REL}/sharedStrings" Target="/xl/sharedStrings.xml"/></Relationships>')
    archive(name, [("[Content_Types].xml", types),
                   ("_rels/.rels", rels + f'<Relationship Id="rId1" Type="{REL}/officeDocument" '
                                          'Target="xl/workbook.xml"/></Relationships>'),
                   ("xl/workbook.xml", book + "</sheets></workbook>"), ("xl/_rels/workbook.xml.rels", leads),
                   ("xl/styles.xml", STYLES), ("xl/sharedStrings.xml", strings.part())] + parts + list(more))


DAY = datetime.date(2026, 5, 9)


def usual_rows():
    """As a person keeps them: a date and time each, numbers as the program stores doubles."""
    rows = [["Configuration", "Direction", "Start", "Fuel consumption (L/100 km)", "Distance (km)", "Temp (°C)"]]
    for c, d, m, v, km, t in RUNS:
        stored = repr(float(v)) if v != "8.12" else "8.1199999999999992"
        rows.append([c, d, ("n", repr(serial(DAY, m)), 3), ("n", stored, 5), ("n", km), ("n", t)])
    return rows


def workbooks():
    s = Strings()
    rows = usual_rows()
    rows[1][3] = ("n", "8.4100000000000001", 5)  # 17 digits of the same double
    xlsx("shared_strings.xlsx", [("Runs", sheet_part(rows, s))], s)

    s = Strings()
    rows = [[("inline", "Fahrten im Mai")], [], [("inline", h) for h in
            ("Nr", "Datum", "Uhrzeit", "Zustand", "Richtung", "Verbrauch", "Luftfeuchte", "Dauer")],
            [None, None, None, None, None, ("inline", "l/100km"), ("inline", "%"), None]]
    for i, (c, d, m, v, km, t) in enumerate(RUNS):
        rows.append([("n", str(i + 1)), ("n", str(serial(DAY, None)), 1), ("n", repr((340 + m) / 1440), 2),
                     ("inline", c), ("inline", d), ("n", v), ("n", f"0.{65 + i}", 4),
                     ("n", repr((210 + i) / 86400), 6)])
    rows.append([("inline", "Summe"), None, None, None, None,
                 ("raw", '<c r="@"><f>SUM(F5:F12)</f><v>66.84</v></c>')])
    xlsx("inline_strings_times.xlsx", [("Mai", sheet_part(rows, s))], s)

    s = Strings()
    base = datetime.date(1904, 1, 1)
    rows = [["Config", "Dir", "Start", "km/L"]] + [
        [c, d, ("n", repr(serial(DAY, m, base)), 8), ("n", f"{12 + i * 0.1:.1f}")]
        for i, (c, d, m, *_) in enumerate(RUNS)]
    xlsx("dates_of_1904.xlsx", [("Sheet1", sheet_part(rows, s))], s, '<workbookPr date1904="1"/>')

    s = Strings()
    rows = [["Configuration", "Direction", "Start", "L/100km", "OK"]] + [
        [c, d, ("raw", f'<c r="@" t="d"><v>2026-05-09T{clock(m)}</v></c>'),
         ("raw", f'<c r="@" t="str"><f>TEXT(1,"0")</f><v>{v}</v></c>'), ("raw", '<c r="@" t="b"><v>1</v></c>')]
        for c, d, m, v, *_ in RUNS]
    xlsx("iso_dates_and_formulas.xlsx", [("Strict", sheet_part(rows, s, namespace=STRICT))], s)

    # Rich text, what it sounds like, and rows and cells that do not say where they are.
    s = Strings()
    part = HEAD + f'<worksheet xmlns="{MAIN}"><sheetData><row>' + "".join(
        f'<c t="inlineStr"><is><r><t>{h[:2]}</t></r><r><rPr><b/></rPr><t>{h[2:]}</t></r><rPh sb="0" eb="1"><t>x</t></rPh></is></c>'
        for h in ("Variant", "Direction", "Start", "L/100 km")) + "</row>" + "".join(
        f'<row><c t="inlineStr"><is><t>{c}</t></is></c><c t="inlineStr"><is><t>{d}</t></is></c><c s="3"><v>'
        f'{serial(DAY, m)!r}</v></c><c><v>{v}</v></c></row>' for c, d, m, v, *_ in RUNS) + "</sheetData></worksheet>"
    xlsx("no_places.xlsx", [("Tabelle1", part)], s)

    s = Strings()
    notes = sheet_part([["Notes on the car"], ["Tyres 2.4 bar"]], s)
    hidden = sheet_part(usual_rows(), s)
    xlsx("second_sheet_and_hidden.xlsx", [("Read me", notes), ("May", sheet_part(usual_rows(), s)), ("Old", hidden)],
         s, states=("", "", "hidden"))
    s = Strings()
    xlsx("two_sheets_with_runs.xlsx", [("May", sheet_part(usual_rows(), s)), ("June", sheet_part(usual_rows()[:5], s))], s)

    # What is refused
    s = Strings()
    xlsx("pivot.xlsx", [("Pivot", sheet_part([["Row labels", "Average of L/100km"], ["A", ("n", "8.3")]], s))], s,
         pivots=(0,))
    s = Strings()
    xlsx("merged.xlsx", [("Runs", sheet_part(usual_rows(), s, '<mergeCells count="2"><mergeCell ref="A2:A5"/>'
                                             '<mergeCell ref="A6:A9"/></mergeCells>'))], s)
    s = Strings()
    rows = usual_rows()
    rows[3][3] = ("raw", '<c r="@"><f>100*F4/E4</f></c>')
    rows[4][3] = ("raw", '<c r="@" t="e"><f>1/0</f><v>#DIV/0!</v></c>')
    xlsx("formula_without_value.xlsx", [("Runs", sheet_part(rows, s))], s)
    s = Strings()
    xlsx("serial_60.xlsx", [("Runs", sheet_part([["Configuration", "Direction", "Start", "L/100km"],
                                                ["A", "out", ("n", "60.25", 3), ("n", "8.4")]], s))], s)
    s = Strings()
    s = Strings()
    part = sheet_part(usual_rows(), s).replace('<row r="3">', '<row r="3" hidden="1">').replace(
        "<sheetData>", '<cols><col min="1" max="1" width="9"/><col min="4" max="4" hidden="1"/></cols><sheetData>')
    xlsx("hidden.xlsx", [("Runs", part)], s)

    s = Strings()
    xlsx("two_beside.xlsx", [("Runs", sheet_part([r[:4] + [None] + r[:4] for r in usual_rows()], s))], s)


# ---------------------------------------------------------------- .ods

ODS = ('<?xml version="1.0" encoding="UTF-8"?>\n<office:document-content '
       'xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" '
       'xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" '
       'xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" '
       'xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0" '
       'xmlns:draw="urn:oasis:names:tc:opendocument:xmlns:drawing:1.0" office:version="1.3"><office:body>'
       '<office:spreadsheet>')
ODS_END = "</office:spreadsheet></office:body></office:document-content>"


def t(words, repeated=1):
    many = f' table:number-columns-repeated="{repeated}"' if repeated > 1 else ""
    return (f'<table:table-cell office:value-type="string" calcext:value-type="string"{many}>'
            f'<text:p>{escape(words)}</text:p></table:table-cell>')


def f(number, shown=None, kind="float", more=""):
    return (f'<table:table-cell office:value-type="{kind}" office:value="{number}"{more}><text:p>{shown or number}'
            '</text:p></table:table-cell>')


def when(kind, value, shown):
    return (f'<table:table-cell office:value-type="{kind}" office:{kind}-value="{value}"><text:p>{shown}</text:p>'
            '</table:table-cell>')


def ods_row(cells, repeated=1):
    many = f' table:number-rows-repeated="{repeated}"' if repeated > 1 else ""
    return f"<table:table-row{many}>{''.join(cells)}</table:table-row>"


GAP = '<table:table-cell table:number-columns-repeated="1018"/>'
REST = ('<table:table-row table:number-rows-repeated="1048500"><table:table-cell '
        'table:number-columns-repeated="1024"/></table:table-row>')


def ods(name, content, manifest=""):
    archive(name, [("mimetype", "application/vnd.oasis.opendocument.spreadsheet"),
                   ("content.xml", ODS + content + ODS_END),
                   ("META-INF/manifest.xml", '<?xml version="1.0" encoding="UTF-8"?>\n<manifest:manifest '
                    'xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0"><manifest:file-entry '
                    'manifest:full-path="/" manifest:media-type="application/vnd.oasis.opendocument.spreadsheet"/>'
                    f'{manifest}</manifest:manifest>')])


def opendocuments():
    def minutes(m):
        hour, minute = divmod(340 + m, 60)
        return f"PT{hour:02}H{minute:02}M00S"

    # Repeated cells and lines, times as lengths, per cent, a currency, a comment, a shape, a note of blanks.
    head = [t(h) for h in ("Date", "Time", "Configuration", "Direction", "Fuel used (L)", "Distance (km)",
                           "Humidity", "Note")]
    rows = [ods_row([t("Roof generator"), GAP]), ods_row([GAP], 2), ods_row(head + [GAP])]
    for i, (c, d, m, v, km, tt) in enumerate(RUNS):
        note = ('<table:table-cell office:value-type="string"><office:annotation><text:p>a comment</text:p>'
                '</office:annotation><text:p>wet<text:s text:c="2"/>road</text:p></table:table-cell>'
                if i == 1 else "<table:table-cell/>")
        rows.append(ods_row([when("date", "2026-05-09", "09/05/26"), when("time", minutes(m), clock(m)), t(c), t(d),
                             f(f"{float(v) * 5.2 / 100:.3f}", kind="currency", more=' office:currency="EUR"')
                             if i == 2 else f(f"{float(v) * 5.2 / 100:.3f}"),
                             f(km), f(f"0.{65 + i}", f"{65 + i} %", "percentage"), note, GAP]))
    rows.append(ods_row([t("Total"), GAP, GAP]))
    ods("repeated_and_times.ods", f'<table:table table:name="Mai">{"".join(rows)}{REST}</table:table>')

    # The same cell for several columns and lines; a date with a time; header lines as such.
    rows = ["<table:table-header-rows>" + ods_row([t(h) for h in ("Inicio", "Configuración", "Sentido", "Consumo "
            "(L/100 km)", "Temperatura (°C)")]) + "</table:table-header-rows>"]
    for c, d, m, v, km, tt in RUNS:
        rows.append(ods_row([when("date", f"2026-05-09T{clock(m)}.000000000", "9 de mayo"), t(c), t(d), f(v), f("14")]))
    ods("dates_with_times.ods", '<table:table table:name="Nada"><table:table-row><table:table-cell/></table:table-row>'
        f'</table:table><table:table table:name="Pruebas"><table:shapes><draw:frame><draw:text-box><text:p>A</text:p>'
        f'</draw:text-box></draw:frame></table:shapes>{"".join(rows)}{REST}</table:table>')

    # A line for all of a day's text starts.
    rows = [ods_row([t(h) for h in ("Versuch", "Datum", "Beginn", "Ausführung", "Richtung", "Benzin (l)", "Weg (km)")])]
    for i, (c, d, m, v, km, tt) in enumerate(RUNS):
        day = t("9.5.2026") if i == 0 else "<table:table-cell/>"
        rows.append(ods_row([t(f"V{i + 1}"), day, t(clock(m, False)), t(c), t(d),
                             t(f"0,{430 + i}"), t("5,2")]))
    ods("texts_and_one_date.ods", f'<table:table table:name="Tabelle1">{"".join(rows)}</table:table>')

    rows = [ods_row([t(h) for h in ("Configuration", "Direction", "Start", "L/100km")])]
    for i, (c, d, m, v, *_) in enumerate(RUNS):
        row = ods_row([t(c), t(d), when("date", f"2026-05-09T{clock(m)}", "x"), f(v)])
        hidden = {1: "collapse", 4: "filter"}.get(i)
        rows.append(row.replace("<table:table-row", f'<table:table-row table:visibility="{hidden}"') if hidden else row)
    ods("hidden.ods", '<table:table table:name="Runs"><table:table-column table:number-columns-repeated="3"/>'
        f'<table:table-column table:visibility="collapse"/>{"".join(rows)}</table:table>')

    # What is refused
    spanned = ('<table:table-cell office:value-type="string" table:number-rows-spanned="4" '
               'table:number-columns-spanned="1"><text:p>A</text:p></table:table-cell>')
    rows = [ods_row([t(h) for h in ("Configuration", "Direction", "Start", "L/100km")])]
    for i, (c, d, m, v, *_) in enumerate(RUNS[:4]):
        rows.append(ods_row([spanned if i == 0 else "<table:covered-table-cell/>", t(d),
                             when("date", f"2026-05-09T{clock(m)}", "x"), f(v)]))
    ods("merged.ods", f'<table:table table:name="Runs">{"".join(rows)}</table:table>')
    ods("pivot.ods", '<table:table table:name="Pivot">' + ods_row([t("Average"), t("A"), t("B")]) +
        '</table:table><table:data-pilot-tables><table:data-pilot-table table:name="P" '
        'table:target-range-address="Pivot.A1:Pivot.C9"/></table:data-pilot-tables>')
    ods("password.ods", "",
        '<manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml" manifest:size="9">'
        '<manifest:encryption-data manifest:checksum="x"/></manifest:file-entry>')


# ---------------------------------------------------------------- no spreadsheets, or too much

def others():
    with open(os.path.join(HERE, "password.xlsx"), "wb") as file:  # the head and a directory of a container
        file.write(b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(504) + "EncryptionInfo".encode("utf-16-le") +
                   bytes(100) + "EncryptedPackage".encode("utf-16-le") + bytes(100))
    with open(os.path.join(HERE, "picture.csv"), "wb") as file:
        file.write(b"\x89PNG\r\n\x1a\n" + bytes(range(64)))
    # 100,000 lines, small only because they are alike.
    many = "<row><c><v>1</v></c></row>" * 100_000
    s = Strings()
    xlsx("hundred_thousand_lines.xlsx", [("Log", HEAD + f'<worksheet xmlns="{MAIN}"><sheetData><row r="1">' + "".join(
        f'<c r="{letters(j)}1" t="s"><v>{s.at(h)}</v></c>'
        for j, h in enumerate(("Start", "Configuration", "Direction", "L/100km"))) +
        f"</row>{many}</sheetData></worksheet>")], s)
    # A bomb: 130 MB of blanks, which pack to 130 kB.
    s = Strings()
    xlsx("bomb.xlsx", [("Runs", HEAD + f'<worksheet xmlns="{MAIN}"><sheetData>' + " " * (130 << 20) +
                        "</sheetData></worksheet>")], s)


if __name__ == "__main__":
    texts()
    workbooks()
    opendocuments()
    others()
