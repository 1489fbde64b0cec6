// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/result_set.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/look/units_shown.h"

#include <QWidget>

#include <memory>

class QLabel;

namespace bothways::app {

/// A page that shows one result: the current one, greyed while the next is computed. It computes
/// nothing and changes nothing.
class ResultView : public QWidget {
    Q_OBJECT

public:
    explicit ResultView(QWidget* parent = nullptr);
    ~ResultView() override;

    /// Takes a new result (null: none yet) and shows it. Ends the greying.
    void setResult(std::shared_ptr<const ResultSet> result);
    void setUnits(const UnitsShown& units);
    void setTheme(const Theme& theme);
    /// Greys the page while what it shows is being computed anew. It stays readable.
    void setRecomputing(bool recomputing);

    [[nodiscard]] bool isRecomputing() const { return m_recomputing; }
    [[nodiscard]] const ResultSet* result() const { return m_result.get(); }
    [[nodiscard]] const UnitsShown& units() const { return m_units; }
    [[nodiscard]] const Theme& theme() const { return m_theme; }

signals:
    void runActivated(int run); ///< somebody wants to see that run

protected:
    /// Shows result(), which is there, in units() and theme().
    virtual void refresh() = 0;
    /// The page's own widget: everything that refresh() fills.
    void setContent(QWidget* content);
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void update();

    std::shared_ptr<const ResultSet> m_result;
    UnitsShown m_units;
    Theme m_theme = Theme::light();
    bool m_recomputing = false;
    QWidget* m_content = nullptr;
    QLabel* m_nothing = nullptr;
    QWidget* m_veil = nullptr;
};

} // namespace bothways::app
