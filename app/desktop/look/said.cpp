// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/said.h"

#include "app/wording/numbers.h"
#include "app/wording/visible_text.h"

#include <QRegularExpression>

namespace bothways::app {

QString withFixedSpaces(QString text)
{
    // "km/h" and "L/100 km" begin with a unit that is here: what follows it is no letter.
    static const QRegularExpression numberAndUnit(QStringLiteral(
        "(?<=\\d) "
        "(?=(?:%|°[CF]?|kWh|k[mBW]|[MG]B|m(?:i|in|pg|ph|L)?|s|h|hPa|rpm|U/min|gal|Hz|[WVLKN])"
        "(?![\\w]))"));
    return text.replace(numberAndUnit, QString(QChar::Nbsp));
}

QString shown(const std::string& words)
{
    return withFixedSpaces(QString::fromStdString(words));
}

QString nameShown(const std::string& given)
{
    return QString::fromStdString(visibleText(given, Breaks::kept));
}

QStringList shown(const std::vector<std::string>& sentences)
{
    QStringList all;
    for (const std::string& sentence : sentences)
        all += shown(sentence);
    return all;
}

QString said(const Language& in, const core::Message& message)
{
    return shown(in.say(message));
}

QString listed(const Language& in, const QStringList& parts)
{
    std::vector<std::string> words;
    for (const QString& part : parts)
        words.push_back(part.toStdString());
    return shown(joined(in, words));
}

QString withCapital(QString phrase)
{
    if (!phrase.isEmpty())
        phrase[0] = phrase[0].toUpper();
    return phrase;
}

QString withFullStop(QString phrase)
{
    if (!phrase.endsWith(u'.') && !phrase.endsWith(u'?'))
        phrase += u'.';
    return phrase;
}

QString asSentence(QString phrase)
{
    return withFullStop(withCapital(std::move(phrase)));
}

QString sentenceOf(const Language& in, const core::Error& error)
{
    return sentenceOf(in, error.message);
}

QString sentenceOf(const Language& in, const core::Message& message)
{
    return asSentence(said(in, message));
}

QString sentenceWithPlace(const Language& in, const core::Error& error)
{
    // A file's name keeps its small letter.
    return error.where.empty() ? sentenceOf(in, error)
                               : withFullStop(shown(in.describeFirst(error)));
}

QString describedHere(const Language& in, const core::Error& error)
{
    return shown(in.describe(error));
}

} // namespace bothways::app
