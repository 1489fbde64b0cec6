// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/history_words.h"

#include "storage/study/history_message.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace bothways::app {
namespace {

struct History {
    Q_DECLARE_TR_FUNCTIONS(History)
};

} // namespace

QString historyKind(const std::string& kind)
{
    if (kind == "new")
        return History::tr("Study made");
    if (kind == "add_run")
        return History::tr("Run added");
    if (kind == "edit_run" || kind == "edit_runs")
        return History::tr("Run changed");
    if (kind == "remove_runs")
        return History::tr("Run removed");
    if (kind == "discard")
        return History::tr("Discarded");
    if (kind == "count")
        return History::tr("Counted again");
    if (kind == "pair")
        return History::tr("Pair tied");
    if (kind == "unpair")
        return History::tr("Pair untied");
    if (kind == "set")
        return History::tr("Study properties");
    if (kind == "rename")
        return History::tr("Renamed");
    if (kind == "import")
        return History::tr("Run sheet imported");
    if (kind == "import_trace")
        return History::tr("Recording imported");
    if (kind == "assign_trace")
        return History::tr("Recording given to a run");
    if (kind == "unassign_trace")
        return History::tr("Recording taken from a run");
    if (kind == "cut_recording")
        return History::tr("Recording cut into runs");
    if (kind == "drop_recording")
        return History::tr("Recording dropped");
    if (kind == "overrule")
        return History::tr("Finding overruled");
    if (kind == "look")
        return History::tr("Verdict looked at");
    if (kind == "blind")
        return History::tr("Blind screening");
    if (kind == "undo")
        return History::tr("Undone");
    if (kind == "redo")
        return History::tr("Done again");
    return QString::fromStdString(kind);
}

QString historyDetail(const storage::HistoryEntry& entry)
{
    QString detail = QString::fromStdString(storage::historyDetail(entry).english()).simplified();
    static const QRegularExpression recording(
        "^(.+): (\\d+) rows, (\\d+) channels(?:, run (\\d+))?(?:; runs? ([\\d, ]+)(?:;.*)?)?$");
    if (const auto match = recording.match(detail);
        match.hasMatch() && entry.kind == "import_trace")
        return match.hasCaptured(5) // cut as it came in
                   ? History::tr("%1: %2 rows, %3 channels, runs %4")
                         .arg(match.captured(1), match.captured(2), match.captured(3),
                              match.captured(5))
                   : match.hasCaptured(4)
                         ? History::tr("%1: %2 rows, %3 channels, run %4")
                               .arg(match.captured(1), match.captured(2), match.captured(3),
                                    match.captured(4))
                         : History::tr("%1: %2 rows, %3 channels")
                               .arg(match.captured(1), match.captured(2), match.captured(3));
    static const QRegularExpression sheet("^(.+): (\\d+) runs$");
    if (const auto match = sheet.match(detail); match.hasMatch() && entry.kind == "import")
        return History::tr("%1: %2 runs").arg(match.captured(1), match.captured(2));
    static const QRegularExpression named("^(runs?) ([\\d, ]+?)(?=:|$)");
    if (const auto match = named.match(detail); match.hasMatch())
        detail.replace(
            0, match.capturedLength(),
            (match.captured(1) == u"run" ? History::tr("run %1") : History::tr("runs %1"))
                .arg(match.captured(2)));
    return detail;
}

QString historyLine(const storage::HistoryEntry& entry, int most)
{
    const QString kind = historyKind(entry.kind);
    if (entry.detail.empty())
        return kind;
    const QString line = History::tr("%1: %2").arg(kind, historyDetail(entry));
    return line.size() <= most ? line : line.left(most - 1) + QChar(0x2026);
}

QDateTime historyTime(const storage::HistoryEntry& entry)
{
    return QDateTime::fromString(QString::fromStdString(entry.at), Qt::ISODateWithMs).toLocalTime();
}

} // namespace bothways::app
