// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/import_report_words.h"

#include "app/desktop/look/error_words.h"
#include "app/desktop/look/recorded_words.h"

namespace bothways::app {
namespace {

struct ImportReport {
    Q_DECLARE_TR_FUNCTIONS(ImportReport)
};

int count(std::int64_t n)
{
    return static_cast<int>(std::min<std::int64_t>(n, std::numeric_limits<int>::max()));
}

/// Sentences about things that were met; none where there are none.
class Oddities {
public:
    void add(std::int64_t n, const QString& sentence)
    {
        if (n > 0)
            m_sentences += sentence;
    }
    [[nodiscard]] QStringList sentences() const { return m_sentences; }

private:
    QStringList m_sentences;
};

void addTimes(Oddities& odd, const storage::TraceReport& r)
{
    odd.add(r.bad_times, ImportReport::tr("%n row(s) without a readable time left out.", nullptr,
                                          count(r.bad_times)));
    odd.add(r.repeated_times,
            ImportReport::tr("%n row(s) with the time of the row before left out.", nullptr,
                             count(r.repeated_times)));
    odd.add(r.backward_times, ImportReport::tr("%n row(s) that fell back in time left out.",
                                               nullptr, count(r.backward_times)));
    odd.add(r.clock_changes,
            ImportReport::tr("The clock was set %n time(s); what follows was joined on.", nullptr,
                             count(r.clock_changes)));
    odd.add(r.rate_changes, ImportReport::tr("The rate of rows changes %n time(s).", nullptr,
                                             count(r.rate_changes)));
    odd.add(r.no_fix, ImportReport::tr("%n time(s) without a position.", nullptr, count(r.no_fix)));
    odd.add(r.bad_positions,
            ImportReport::tr("%n track point(s) that are nowhere on Earth left out.", nullptr,
                             count(r.bad_positions)));
    odd.add(r.bad_checksums, ImportReport::tr("%n sentence(s) with a wrong checksum left out.",
                                              nullptr, count(r.bad_checksums)));
}

void addCells(Oddities& odd, const storage::TraceReport& r)
{
    odd.add(r.missing_cells,
            ImportReport::tr("%n empty cell(s).", nullptr, count(r.missing_cells)));
    odd.add(r.bad_cells, ImportReport::tr("%n cell(s) that are no number, taken as empty.", nullptr,
                                          count(r.bad_cells)));
    odd.add(r.short_rows,
            ImportReport::tr("%n row(s) with too few cells.", nullptr, count(r.short_rows)));
    odd.add(r.long_rows,
            ImportReport::tr("%n row(s) with too many cells.", nullptr, count(r.long_rows)));
    odd.add(r.half_last_line ? 1 : 0,
            ImportReport::tr("The last line is cut short and was left out."));
}

} // namespace

QString formWords(const storage::TracePreview& preview)
{
    if (preview.format == "gpx")
        return ImportReport::tr("GPX track points: position, speed and distance come from them.");
    if (preview.format == "nmea")
        return ImportReport::tr("NMEA sentences: position, speed and distance come from them.");
    const QString columns =
        ImportReport::tr("%n column(s)", nullptr, static_cast<int>(preview.columns.size()));
    const QString parted = preview.separator == ';'    ? ImportReport::tr("parted by semicolons")
                           : preview.separator == '\t' ? ImportReport::tr("parted by tabs")
                                                       : ImportReport::tr("parted by commas");
    const QString decimal = preview.decimalComma ? ImportReport::tr("decimal commas")
                                                 : ImportReport::tr("decimal points");
    //: number of columns, how they are parted, the decimal sign
    return ImportReport::tr("CSV: %1 %2, %3.").arg(columns, parted, decimal);
}

QStringList reportWords(const storage::TraceReport& report, const UnitsShown& units)
{
    QStringList sentences{ImportReport::tr("%n row(s) came in,", nullptr, count(report.rows)) +
                          u' ' +
                          ImportReport::tr("%1 long, with %n channel(s).", nullptr,
                                           static_cast<int>(report.channels.size()))
                              .arg(lengthText(report.length_s))};
    if (report.mapping_kept)
        sentences += ImportReport::tr("The mapping kept for this header was used.");
    if (!report.clock_note.empty())
        sentences += ImportReport::tr("Clocks: %1.")
                         .arg(QString::fromStdString(report.clock_note.english()));
    Oddities odd;
    addTimes(odd, report);
    addCells(odd, report);
    odd.add(report.gaps,
            ImportReport::tr("%n gap(s), the longest %1 s.", nullptr, count(report.gaps))
                .arg(units.number(report.longest_gap_s, 1)));
    sentences += odd.sentences();
    QStringList leftOut;
    for (const std::string& column : report.left_out)
        leftOut += QString::fromStdString(column);
    if (!leftOut.isEmpty())
        sentences +=
            ImportReport::tr("Left out, as it holds no number: %1.").arg(leftOut.join(", "));
    return sentences;
}

QString faultWords(const core::Error& error)
{
    QString sentence = sentenceOf(error);
    if (!error.where.empty()) //: the place of a fault in a file, and the fault
        sentence = ImportReport::tr("%1: %2").arg(placeOf(error), sentence);
    return sentence;
}

} // namespace bothways::app
