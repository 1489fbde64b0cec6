// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/recordings/cut_material.h"
#include "storage/recordings/cut.h"
#include "storage/recordings/recordings.h"

#include <QDialog>
#include <QFutureWatcher>

class QCheckBox;
class QComboBox;
class QLabel;
class QPushButton;

namespace bothways::app {

class ClockRow;
class CutPlot;
class CutTable;
class GateRow;
class Preferences;
class StudyDocument;

/// A recording of a whole drive, and where it may be cut into runs: proposals on the speed plot
/// that are unticked, dragged and nudged, and become runs in one step.
class CutDialog final : public QDialog {
    Q_OBJECT

public:
    CutDialog(StudyDocument& document, Preferences& preferences, storage::RecordingInfo recording,
              QWidget* parent = nullptr);
    ~CutDialog() override;

    [[nodiscard]] CutPlot& plot() const { return *m_plot; }
    [[nodiscard]] CutTable& table() const { return *m_table; }
    /// True once the recording has been read.
    [[nodiscard]] bool isReady() const { return m_material != nullptr; }

signals:
    void runsMade(int count);

private:
    using Material = std::shared_ptr<core::Result<CutMaterial>>;
    void build();
    void read();
    void takeMaterial();
    void takeWay();
    void takeGates();
    void takeGatesFromPart();
    [[nodiscard]] CutWay way() const;
    [[nodiscard]] QString nothingWords() const;
    void makeRuns();
    void say(const QString& words);
    [[nodiscard]] core::Result<std::vector<storage::Cut>> cuts() const;

    StudyDocument& m_document;
    Preferences& m_preferences;
    /// With the beginning that was typed, where it has no clock.
    [[nodiscard]] core::Result<storage::RecordingInfo> timed() const;
    /// Gaps that the parts hold, or end or begin with, a line each.
    [[nodiscard]] QString gapWords() const;

    storage::RecordingInfo m_recording;
    std::shared_ptr<storage::StudyFile> m_connection;
    QFutureWatcher<Material> m_reading;
    std::unique_ptr<CutMaterial> m_material;
    QComboBox* m_way = nullptr;
    ClockRow* m_clock = nullptr;
    GateRow* m_gates = nullptr;
    std::optional<core::Geofence> m_fence; ///< that somebody chose
    bool m_again = false;                  ///< something changed while it was being read
    CutPlot* m_plot = nullptr;
    CutTable* m_table = nullptr;
    QCheckBox* m_timed = nullptr;
    QLabel* m_words = nullptr;
    QPushButton* m_make = nullptr;
};

} // namespace bothways::app
