// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "app/desktop/watch/rig_store.h"

#include <QDialog>
#include <QPointer>

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace bothways::app {

class CalibrationDialog;
class InstrumentForm;
class Preferences;
class RigTrial;
class RunsByForm;

/// The instruments of the car: set up, tried, calibrated, kept under a name.
class RigDialog final : public QDialog {
    Q_OBJECT

public:
    RigDialog(Preferences& preferences, QWidget* parent = nullptr);
    /// A study is open that can be recorded into.
    void setRecordable(bool recordable);
    [[nodiscard]] const storage::Rig& rig() const { return m_rig; }

signals:
    void recordingWanted(); ///< with the rig that was just kept

private:
    void build();
    QLayout* buildNames();
    QLayout* buildInstruments();
    QLayout* buildButtons();
    void load(const QString& name);
    void newRig();
    bool save();
    void removeRig();
    void fillNames(const QString& current);
    void fillInstruments(int current);
    void addInstrument();
    void removeInstrument();
    void takeForm();
    void tryRig(bool on);
    void calibrate();
    void say(const QString& words);
    void say(const core::Error& error);

    Preferences& m_preferences;
    UnitsShown m_units;
    RigStore m_store;
    storage::Rig m_rig;
    QComboBox* m_names = nullptr;
    QLineEdit* m_name = nullptr;
    QListWidget* m_list = nullptr;
    InstrumentForm* m_form = nullptr;
    RunsByForm* m_runs = nullptr;
    RigTrial* m_trial = nullptr;
    QPointer<CalibrationDialog> m_calibration; ///< deletes itself when it is closed
    QPushButton *m_try = nullptr, *m_take = nullptr, *m_calibrate = nullptr, *m_record = nullptr;
    QLabel* m_words = nullptr;
};

} // namespace bothways::app
