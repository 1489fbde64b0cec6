// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/recordings/recording_import.h"
#include "storage/loggers/channel_mapping.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QRadioButton;

namespace bothways::app {

class ChannelMappingTable;
class ClockRow;
class Preferences;
class StudyDocument;

/// A recording on its way into the study: what was found in its header, what its columns are, and
/// whose it is. The work goes on beside the window, which stays free; Stop leaves the study as it
/// was.
class RecordingImportDialog final : public QDialog {
    Q_OBJECT

public:
    /// @param run  number of the run to offer first; 0: none
    RecordingImportDialog(StudyDocument& document, Preferences& preferences, const QString& file,
                          int run, QWidget* parent = nullptr);
    ~RecordingImportDialog() override;

    void reject() override;

signals:
    void cutWanted(core::RecordingId recording);

private:
    void build(int run);
    QWidget* buildOwner(int run);
    void takePreview(const RecordingImport::Preview& preview);
    void start();
    void takeReport(const RecordingImport::Report& report);
    [[nodiscard]] QString reportWords(const storage::TraceReport& report) const;
    void say(const QString& words, bool problem);
    void follow();

    StudyDocument& m_document;
    Preferences& m_preferences;
    QString m_file;
    RecordingImport* m_import;
    std::vector<storage::ChannelMapping> m_offered; ///< unchanged: nothing new is to be kept
    bool m_readable = false;
    bool m_done = false;
    core::RecordingId m_recording{};

    QLabel* m_form = nullptr;
    ChannelMappingTable* m_mapping = nullptr;
    QRadioButton* m_ofRun = nullptr;
    QRadioButton* m_whole = nullptr;
    QComboBox* m_run = nullptr;
    ClockRow* m_clock = nullptr;
    QLabel* m_words = nullptr;
    QProgressBar* m_progress = nullptr;
    QLabel* m_rate = nullptr;
    QPushButton* m_start = nullptr;
    QPushButton* m_stop = nullptr;
    QPushButton* m_cut = nullptr;
    QPushButton* m_close = nullptr;
};

} // namespace bothways::app
