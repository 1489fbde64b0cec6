// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>

#include <memory>

class QWidget;

namespace bothways::app {

class HelpWindow;

/// Opens the handbook at the right place for a window and its dialogs: when asked by a "?" (see
/// helpButton() of look/help_topics.h), and for F1. A dialog keeps the keys of its window from
/// working, so F1 in one is caught here.
class HelpDesk final : public QObject {
    Q_OBJECT

public:
    explicit HelpDesk(QWidget& window);
    ~HelpDesk() override;

    /// "rules#overspeed". What is not there opens the index.
    void open(const QString& topic);
    /// The page for what has the keyboard now.
    void openHere();
    /// Null before it was opened for the first time.
    [[nodiscard]] HelpWindow* window() const { return m_help.get(); }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] bool isOurs(const QWidget* widget) const;

    QWidget& m_window;
    std::unique_ptr<HelpWindow> m_help;
};

} // namespace bothways::app
