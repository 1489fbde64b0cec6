// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/same_runs.h"
#include "app/answer/several.h"
#include "app/desktop/document/result_set.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/look/units_shown.h"

#include <QWidget>

#include <memory>
#include <optional>
#include <vector>

class QLabel;
class QPushButton;
class QTableWidget;

namespace bothways::app {

class ForestPlot;

/// One of several studies that are set beside one another.
struct ComparedStudy {
    QString name;
    std::shared_ptr<const ResultSet> result;
    GivenStudy given = {}; ///< by which one sees whether it counts twice
};

/// Several studies in one table and one picture and, where they ask the same question, one pooled
/// effect (core/answer/pooled.h).
class ComparePage final : public QWidget {
    Q_OBJECT

public:
    explicit ComparePage(QWidget* parent = nullptr);
    ~ComparePage() override;

    void setStudies(std::vector<ComparedStudy> studies);
    void setUnits(const UnitsShown& units);
    void setTheme(const Theme& theme);
    [[nodiscard]] const std::optional<core::Pooled>& pooled() const { return m_several.pooled; }

signals:
    void addAsked();
    void removeAsked(int study); ///< its place in the list

protected:
    void changeEvent(QEvent* event) override;

private:
    void refresh();
    void showTable();
    void showForest();
    [[nodiscard]] QString pooledSentence() const;
    [[nodiscard]] QString pooledCaveat() const;

    std::vector<ComparedStudy> m_studies;
    Several m_several; ///< the same studies, row by row
    UnitsShown m_units;
    Theme m_theme = Theme::light();
    QLabel* m_sentence = nullptr;
    QLabel* m_caveat = nullptr;
    ForestPlot* m_forest = nullptr;
    QTableWidget* m_table = nullptr;
    QPushButton* m_add = nullptr;
    QPushButton* m_remove = nullptr;
};

} // namespace bothways::app
