// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QString>
#include <QStringList>

/// The handbook as text: pages, their sections, what can be linked to and found. Qt-wise it is
/// Markdown compiled in under :/help; the files themselves are in resources/help.
namespace bothways::app {

/// Where in the handbook: "rules", or "rules#overspeed".
struct HelpTopic {
    QString page;
    QString anchor; ///< empty: the top of the page

    [[nodiscard]] static HelpTopic of(const QString& text);
    [[nodiscard]] QString text() const;
    friend bool operator==(const HelpTopic&, const HelpTopic&) = default;
};

/// What a heading is linked to by: in lower case, without punctuation, hyphens for blanks, as the
/// places where the repository is read make it. A page in another language has the anchors of the
/// English one instead, each written into its heading: `## <a id="overspeed"></a>Überdrehzahl`.
[[nodiscard]] QString anchorOf(const QString& heading);

struct HandbookSection {
    int level = 1;
    QString title;
    QString anchor;
    QString text; ///< without marks, in one line
};

struct HandbookPage {
    QString name;   ///< "why_pairs"
    QString folder; ///< under :/help: "de/", or empty for the English; its pictures lie there, too
    QString title;
    QString markdown;                ///< without the marks for anchors
    QList<HandbookSection> sections; ///< the first is the page's own heading
    QStringList links;               ///< as written: "rules.md#overspeed"
    QStringList pictures;            ///< as written: "pictures/pair.svg"

    [[nodiscard]] const HandbookSection* section(const QString& anchor) const;
};

struct HandbookHit {
    HelpTopic topic;
    QString title;   ///< "What spoils a run: overspeed"
    QString excerpt; ///< the words around what was found
};

class Handbook {
public:
    /// @param language  "de" takes each page from :/help/de where there is one; else the English
    explicit Handbook(const QString& language = {});

    /// In the order of the index, which comes first.
    [[nodiscard]] const QList<HandbookPage>& pages() const { return m_pages; }
    /// Null where there is none.
    [[nodiscard]] const HandbookPage* page(const QString& name) const;
    [[nodiscard]] bool has(const HelpTopic& topic) const;
    /// A link of a page as a topic; empty page where it leads out of the handbook.
    [[nodiscard]] static HelpTopic linkFrom(const QString& page, const QString& link);
    /// Sections that have all the words, those with one in their heading first.
    [[nodiscard]] QList<HandbookHit> search(const QString& words) const;

private:
    QList<HandbookPage> m_pages;
};

} // namespace bothways::app
