// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/help/handbook.h"

#include <QWidget>

class QAction;
class QLabel;
class QLineEdit;
class QListWidget;
class QSplitter;
class QStackedWidget;
class QToolBar;
class QTreeWidget;
class QTreeWidgetItem;

namespace bothways::app {

class HelpBrowser;

/// The handbook in a window of its own: contents at the left, a page at the right, back and
/// forward, a search over all pages and one in the page.
class HelpWindow final : public QWidget {
    Q_OBJECT

public:
    explicit HelpWindow(const QString& language = {}, QWidget* parent = nullptr);
    ~HelpWindow() override;

    [[nodiscard]] const Handbook& handbook() const { return m_handbook; }
    /// False, with the page that was there kept, where the handbook has no such place.
    bool open(const HelpTopic& topic);
    [[nodiscard]] const HelpTopic& topic() const { return m_topic; }
    void back();
    void forward();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Visit {
        HelpTopic topic;
        int scrolled = 0;
    };

    void buildBar();
    QWidget* buildSide();
    /// @param sign  that the button shows in place of its text
    void addCommand(const char* name, const QString& text, const QList<QKeySequence>& keys,
                    void (HelpWindow::*job)(), const QString& sign = {});
    void fillContents();
    void turnTo(const HelpTopic& topic);
    /// One step along the pages visited: `from` gives it, `to` keeps the way back.
    void revisit(QList<Visit>& from, QList<Visit>& to);
    void follow();
    void followLink(const QString& link);
    void searchAll();
    void startFind();
    void findNext();
    void findBefore();
    void leave();

    Handbook m_handbook;
    HelpTopic m_topic;
    QList<Visit> m_before, m_after;
    QToolBar* m_bar = nullptr;
    QLineEdit* m_search = nullptr;
    QStackedWidget* m_side = nullptr; ///< contents, or what the search found
    QTreeWidget* m_contents = nullptr;
    QListWidget* m_hits = nullptr;
    QSplitter* m_splitter = nullptr;
    QLineEdit* m_find = nullptr;
    QLabel* m_found = nullptr;
    HelpBrowser* m_browser = nullptr;
};

} // namespace bothways::app
