// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "core/base/result.h"
#include "core/study/limits.h"
#include "core/study/study.h"

#include <QDialog>

#include <functional>
#include <vector>

class QFormLayout;
class QLabel;
class QLineEdit;
class QComboBox;
class QPlainTextEdit;
class QTableWidget;
class QTabWidget;

namespace bothways::app {

/// What is known about the whole study: its name and question, the stretch and the vehicle, limits
/// of the screening rules, timed accessories, the plan. Numbers are typed in the user's units.
class StudyPropertiesDialog final : public QDialog {
    Q_OBJECT

public:
    /// Takes the properties in, or says why not.
    using Apply = std::function<core::Outcome(const core::StudyProperties&)>;

    StudyPropertiesDialog(const core::Study& study, const UnitsShown& units, Apply apply,
                          QWidget* parent = nullptr);

    /// What stands in the fields; an Error names the property and what is permitted.
    [[nodiscard]] core::Result<core::StudyProperties> properties() const;
    void showPage(const QString& objectName);
    void accept() override;

private:
    enum class Kind { text, date, numbers, number, km, kmh }; ///< `numbers` are a list
    struct Field {
        std::string property;
        Kind kind;
        QLineEdit* editor;
        double stored; ///< in the property's unit, so that an untouched field keeps its digits
        QString shown;
    };

    void addField(QFormLayout& form, const QString& label, const std::string& property, Kind kind,
                  const QString& help);
    QWidget* makeStudyPage();
    QWidget* makeStretchPage();
    QWidget* makeLimitsPage();
    QWidget* makeAccessoriesPage();
    QWidget* makePlanPage();
    [[nodiscard]] std::string valueOf(const Field& field) const;
    [[nodiscard]] std::string baseText(const std::string& property) const;
    void addLimitRow(const core::LimitInfo& limit, const std::string& name);
    void addAccessoryRow(const QString& name, const QString& watts, const QString& minutes);
    void showFault(const core::Error& error);

    const core::Study& m_study;
    UnitsShown m_units;
    Apply m_apply;
    std::vector<std::pair<std::string, std::string>> m_texts; ///< as they were
    std::vector<Field> m_fields;
    QTabWidget* m_pages;
    QComboBox* m_fuel = nullptr;
    QPlainTextEdit* m_notes = nullptr;
    QTableWidget* m_limits = nullptr;
    QTableWidget* m_accessories = nullptr;
    QLabel* m_fault;
};

} // namespace bothways::app
