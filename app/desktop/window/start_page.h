// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/window/start_drawings.h"

#include <QWidget>

#include <vector>

class QCommandLinkButton;
class QListWidget;

namespace bothways::app {

class Preferences;

/// Before a study is open: what the program is for, and five ways to begin.
class StartPage final : public QWidget {
    Q_OBJECT

public:
    explicit StartPage(Preferences& preferences, QWidget* parent = nullptr);

signals:
    void demoWanted();
    void emptyStudyWanted();
    void openWanted();
    void sheetWanted();
    void fileWanted(const QString& file);

protected:
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] QLayout* buildChoices(QWidget* column);
    void draw();
    void buildRecent();
    void fillRecent();

    Preferences& m_preferences;
    QWidget* m_recentBox;
    QListWidget* m_recent;
    std::vector<std::pair<QCommandLinkButton*, StartDrawing>> m_choices;
};

} // namespace bothways::app
