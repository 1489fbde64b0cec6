// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/help/handbook.h"

#include <QTextBrowser>

namespace bothways::app {

/// One page of the handbook, laid out: headings, tables and pictures in the window's colours and
/// letters. Lines do not get longer than one reads well.
class HelpBrowser final : public QTextBrowser {
    Q_OBJECT

public:
    explicit HelpBrowser(QWidget* parent = nullptr);

    void showPage(const HandbookPage& page);
    /// Scrolls to a section, or to the top where there is none of that name.
    void scrollToSection(const QString& anchor);
    /// Marks every place where the text stands; gives how many there are.
    int markAll(const QString& text);
    /// Goes to the next place, or the one before, round the end. False where there is none.
    bool findNext(const QString& text, bool backward = false);

signals:
    void linkFollowed(const QString& link); ///< as written in the page

protected:
    QVariant loadResource(int type, const QUrl& name) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void layOut();
    void dressBlocks();
    void dressTables(QTextFrame* frame);
    void fitPictures();
    void fitWidth();

    HandbookPage m_page;
    QString m_marked;
};

/// A picture of the handbook in the colours of the window: they are drawn for white paper.
[[nodiscard]] QByteArray inColoursOf(const QPalette& palette, QByteArray svg);

} // namespace bothways::app
