// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/error_words.h"

#include "app/desktop/look/error_patterns.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

namespace bothways::app {
namespace {

struct Pattern {
    const char* source = nullptr;
    QRegularExpression form; ///< of a whole sentence, with a group for each value
    qsizetype words = 0;     ///< letters that are the pattern's own
};

Pattern patternOf(const char* source)
{
    static const QRegularExpression place(QStringLiteral("%\\d"));
    Pattern pattern{source, {}, 0};
    QString form;
    const QStringList parts = QString::fromUtf8(source).split(place);
    for (qsizetype i = 0; i < parts.size(); ++i) {
        form +=
            (i > 0 ? QStringLiteral("(.+?)") : QString()) + QRegularExpression::escape(parts[i]);
        pattern.words += parts[i].size();
    }
    pattern.form = QRegularExpression(QRegularExpression::anchoredPattern(form),
                                      QRegularExpression::DotMatchesEverythingOption);
    return pattern;
}

/// Those with most words first: "is empty; expected a name" before "%1; expected %2".
const std::vector<Pattern>& patterns()
{
    static const std::vector<Pattern> all = [] {
        std::vector<Pattern> made;
        for (const char* source : errorPatterns())
            made.push_back(patternOf(source));
        std::stable_sort(made.begin(), made.end(),
                         [](const Pattern& a, const Pattern& b) { return a.words > b.words; });
        return made;
    }();
    return all;
}

/// What stands in an Error's place beside the file and the line.
const std::array<std::pair<QRegularExpression, const char*>, 3>& placeForms()
{
    static const std::array<std::pair<QRegularExpression, const char*>, 3> forms{
        {{QRegularExpression("^column ('.*'|\\d+)$"), QT_TRANSLATE_NOOP("Errors", "column %1")},
         {QRegularExpression("^run (\\d+)$"), QT_TRANSLATE_NOOP("Errors", "run %1")},
         {QRegularExpression("^new run (\\d+)$"), QT_TRANSLATE_NOOP("Errors", "new run %1")}}};
    return forms;
}

QString translated(const QString& sentence)
{
    for (const Pattern& pattern : patterns()) {
        const auto match = pattern.form.match(sentence);
        if (!match.hasMatch())
            continue;
        const QString here = QCoreApplication::translate("Errors", pattern.source);
        QString text;
        for (qsizetype i = 0; i < here.size(); ++i) { // not arg(): a value may hold "%2" itself
            const int value = here[i] == u'%' && i + 1 < here.size() ? here[i + 1].digitValue() : 0;
            if (value > 0)
                text += translated(match.captured(value)), ++i;
            else
                text += here[i];
        }
        return text;
    }
    return sentence;
}

} // namespace

QString translated(const std::string& sentence)
{
    return translated(QString::fromStdString(sentence));
}

bool isRecognised(const std::string& sentence)
{
    const QString text = QString::fromStdString(sentence);
    return std::any_of(patterns().begin(), patterns().end(),
                       [&](const Pattern& pattern) { return pattern.form.match(text).hasMatch(); });
}

QString placeOf(const core::Error& error)
{
    QStringList parts = QString::fromStdString(error.where.english()).split(": ");
    for (QString& part : parts)
        for (const auto& [form, source] : placeForms())
            if (const auto match = form.match(part); match.hasMatch())
                part = QCoreApplication::translate("Errors", source).arg(match.captured(1));
    return parts.join(": ");
}

QString sentenceOf(const core::Error& error)
{
    QString sentence = translated(error.message.english());
    if (!sentence.isEmpty())
        sentence[0] = sentence[0].toUpper();
    if (!sentence.endsWith(u'.') && !sentence.endsWith(u'?'))
        sentence += u'.';
    return sentence;
}

QString describedHere(const core::Error& error)
{
    QString text = translated(error.message.english());
    if (!error.where.empty())
        text = placeOf(error) + ": " + text;
    for (const core::Error& other : error.others)
        text += u'\n' + describedHere(other);
    return text;
}

} // namespace bothways::app
