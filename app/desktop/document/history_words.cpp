// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/history_words.h"

#include "app/desktop/look/said.h"
#include "app/wording/history.h"
#include "storage/study/history_message.h"

namespace bothways::app {
namespace {

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

QDateTime historyTime(const storage::HistoryEntry& entry)
{
    return QDateTime::fromString(QString::fromStdString(entry.at), Qt::ISODateWithMs).toLocalTime();
}

} // namespace bothways::app
