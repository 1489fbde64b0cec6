// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/help/handbook.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QTextBlock>
#include <QTextDocument>

#include <algorithm>

/// Outside of every namespace, as Qt's macro wants it.
static void initHandbook()
{
    Q_INIT_RESOURCE(bothways_handbook);
}

namespace bothways::app {
namespace {

/// Takes the page of the language, else the English one.
void readText(HandbookPage& page, const QString& language)
{
    for (const QString& folder : {language.isEmpty() ? language : language + u'/', QString()}) {
        QFile file(":/help/" + folder + page.name + ".md");
        if (!file.open(QIODevice::ReadOnly))
            continue;
        page.folder = folder;
        page.markdown = QString::fromUtf8(file.readAll());
        return;
    }
}

/// Takes the marks for anchors out of the text: one for each heading, empty where it has none.
QStringList takeAnchors(QString& markdown)
{
    static const QRegularExpression heading(R"re(^(#+ )(?:<a id="([^"]*)"></a>)?)re",
                                            QRegularExpression::MultilineOption);
    QStringList anchors;
    for (auto it = heading.globalMatch(markdown); it.hasNext();)
        anchors += it.next().captured(2);
    markdown.replace(heading, "\\1");
    return anchors;
}

void addSection(HandbookPage& page, const QTextBlock& block, const QString& anchor)
{
    HandbookSection section;
    section.level = block.blockFormat().headingLevel();
    section.title = block.text();
    const QString plain = anchor.isEmpty() ? anchorOf(section.title) : anchor;
    section.anchor = plain;
    for (int n = 1; page.section(section.anchor); ++n)
        section.anchor = plain + u'-' + QString::number(n);
    page.sections += section;
}

HandbookPage readPage(const QString& name, const QString& language)
{
    HandbookPage page;
    page.name = name;
    readText(page, language);
    const QStringList anchors = takeAnchors(page.markdown);
    QTextDocument document;
    document.setMarkdown(page.markdown);
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() > 0)
            addSection(page, block, anchors.value(page.sections.size()));
        else if (!page.sections.isEmpty())
            page.sections.back().text += block.text() + u' ';
        for (auto it = block.begin(); !it.atEnd(); ++it) {
            const QTextCharFormat format = it.fragment().charFormat();
            if (format.isImageFormat())
                page.pictures += format.toImageFormat().name();
            else if (format.isAnchor() && !format.anchorHref().isEmpty())
                page.links += format.anchorHref();
        }
    }
    for (HandbookSection& section : page.sections)
        section.text = section.text.simplified().remove(QChar::ObjectReplacementCharacter);
    page.title = page.sections.isEmpty() ? name : page.sections.front().title;
    page.links.removeDuplicates();
    return page;
}

/// The words around the first place where one of `words` stands.
QString excerptOf(const QString& text, const QStringList& words)
{
    constexpr qsizetype kBefore = 40;
    constexpr qsizetype kLength = 140;
    qsizetype at = -1;
    for (const QString& word : words) {
        const qsizetype found = text.indexOf(word, 0, Qt::CaseInsensitive);
        if (found >= 0 && (at < 0 || found < at))
            at = found;
    }
    qsizetype from = std::max<qsizetype>(0, at - kBefore);
    if (from > 0)
        from = text.indexOf(u' ', from) + 1;
    QString excerpt = text.mid(from, kLength);
    if (from + kLength < text.size())
        excerpt = excerpt.left(excerpt.lastIndexOf(u' ')) + u'…';
    return from > 0 ? u'…' + excerpt : excerpt;
}

} // namespace

HelpTopic HelpTopic::of(const QString& text)
{
    const qsizetype at = text.indexOf(u'#');
    return at < 0 ? HelpTopic{text, {}} : HelpTopic{text.left(at), text.mid(at + 1)};
}

QString HelpTopic::text() const
{
    return anchor.isEmpty() ? page : page + u'#' + anchor;
}

QString anchorOf(const QString& heading)
{
    QString anchor;
    for (const QChar c : heading.trimmed().toLower()) {
        if (c.isLetterOrNumber() || c == u'_' || c == u'-')
            anchor += c;
        else if (c.isSpace())
            anchor += u'-';
    }
    return anchor;
}

const HandbookSection* HandbookPage::section(const QString& anchor) const
{
    const auto it = std::find_if(sections.begin(), sections.end(),
                                 [&](const auto& section) { return section.anchor == anchor; });
    return it == sections.end() ? nullptr : &*it;
}

Handbook::Handbook(const QString& language)
{
    initHandbook();
    m_pages += readPage("index", language);
    const QStringList links = m_pages.front().links;
    for (const QString& link : links) {
        const HelpTopic topic = linkFrom("index", link);
        if (!topic.page.isEmpty() && !page(topic.page))
            m_pages += readPage(topic.page, language);
    }
}

const HandbookPage* Handbook::page(const QString& name) const
{
    const auto it = std::find_if(m_pages.begin(), m_pages.end(),
                                 [&](const HandbookPage& page) { return page.name == name; });
    return it == m_pages.end() ? nullptr : &*it;
}

bool Handbook::has(const HelpTopic& topic) const
{
    const HandbookPage* found = page(topic.page);
    return found && (topic.anchor.isEmpty() || found->section(topic.anchor));
}

HelpTopic Handbook::linkFrom(const QString& page, const QString& link)
{
    HelpTopic topic = HelpTopic::of(link);
    if (topic.page.isEmpty())
        topic.page = page;
    else if (topic.page.endsWith(".md") && !topic.page.contains(u'/'))
        topic.page.chop(3);
    else
        return {};
    return topic;
}

QList<HandbookHit> Handbook::search(const QString& words) const
{
    const QStringList wanted = words.split(u' ', Qt::SkipEmptyParts);
    QList<HandbookHit> inHeading;
    QList<HandbookHit> inText;
    if (wanted.isEmpty())
        return {};
    for (const HandbookPage& page : m_pages)
        for (const HandbookSection& section : page.sections) {
            const auto has = [&](const QString& text) {
                return [&text](const QString& word) {
                    return text.contains(word, Qt::CaseInsensitive);
                };
            };
            const QString all = section.title + u' ' + section.text;
            if (!std::all_of(wanted.begin(), wanted.end(), has(all)))
                continue;
            const bool top = &section == &page.sections.front();
            HandbookHit hit{{page.name, top ? QString() : section.anchor},
                            top ? page.title
                                //: page and section of the handbook
                                : QCoreApplication::translate("Handbook", "%1: %2")
                                      .arg(page.title, section.title),
                            excerptOf(section.text, wanted)};
            const bool first = std::any_of(wanted.begin(), wanted.end(), has(section.title));
            (first ? inHeading : inText) += hit;
        }
    return inHeading + inText;
}

} // namespace bothways::app
