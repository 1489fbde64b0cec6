// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/history_words.h"

#include "app/desktop/look/said.h"
#include "app/wording/history.h"
#include "storage/study/history_detail.h"
#include "storage/study/history_message.h"

#include <algorithm>

namespace bothways::app {
namespace {

using List = storage::HistoryValue::List;

constexpr const char* kHiddenCell = "•••";

/// Run and cells, as an edit has them.
void hideCells(List& change)
{
    for (std::size_t i = 1; i + 2 < change.size(); i += 3)
        if (change[i].text() == "consumption" || change[i].text() == "control")
            change[i + 1] = change[i + 2] = storage::HistoryValue(kHiddenCell);
}

/// The lists of `values` from `place` on.
void changeLists(List& values, std::size_t place, void (*change)(List&))
{
    for (std::size_t i = place; i < values.size(); ++i) {
        if (!values[i].isList())
            continue;
        List list = values[i].list();
        change(list);
        values[i] = storage::HistoryValue(std::move(list));
    }
}

void hideFacts(List& run)
{
    constexpr std::size_t kConsumption = 4; // then its unit
    run.resize(std::min(run.size(), kConsumption), storage::HistoryValue(""));
}

/// Whether an earlier version's English line of this kind may hold a consumption.
bool mayTell(const std::string& kind)
{
    for (const char* harmless : {"new", "discard", "count", "pair", "unpair", "set", "rename",
                                 "import", "overrule", "blind", "drop_recording"})
        if (kind == harmless)
            return false;
    return true;
}

/// On one line: what people typed may have more.
QString onOneLine(const std::string& words)
{
    return withFixedSpaces(QString::fromStdString(words).simplified());
}

} // namespace

QString historyKind(const Language& in, const std::string& kind)
{
    return shown(wording::historyKind(in, kind));
}

QString historyDetail(const Language& in, const storage::HistoryEntry& entry)
{
    if (const auto change = storage::changeBehind(entry))
        return onOneLine(wording::historyLine(in, *change));
    return onOneLine(in.say(storage::historyDetail(entry)));
}

QString historyLine(const Language& in, const storage::HistoryEntry& entry, int most)
{
    const QString line = onOneLine(wording::historyLine(in, entry));
    return line.size() <= most ? line : line.left(most - 1) + QChar(0x2026);
}

storage::HistoryEntry withoutConsumption(const storage::HistoryEntry& entry)
{
    storage::HistoryEntry shown = entry;
    if (const auto change = storage::changeBehind(entry)) {
        const storage::HistoryEntry hidden = withoutConsumption(*change);
        shown.detail = hidden.kind + ' ' + hidden.detail;
        return shown;
    }
    auto detail = storage::HistoryDetail::read(entry.detail);
    if (!detail) {
        if (mayTell(entry.kind))
            shown.detail.clear();
        return shown;
    }
    if (detail->form == "facts")
        changeLists(detail->values, 0, hideFacts);
    else if (detail->form == "edit")
        changeLists(detail->values, 0, hideCells);
    else if (detail->form == "cut")
        changeLists(detail->values, storage::kRunsOfCut + 1, hideCells);
    else if (detail->form == "recording")
        changeLists(detail->values, storage::kRunsOfRecording + 1, hideCells);
    else if (detail->form == "look")
        *detail = {};
    shown.detail = detail->written();
    return shown;
}

QDateTime historyTime(const storage::HistoryEntry& entry)
{
    return QDateTime::fromString(QString::fromStdString(entry.at), Qt::ISODateWithMs).toLocalTime();
}

} // namespace bothways::app
