// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/recordings/recordings.h"

#include <QDialog>
#include <QFutureWatcher>

#include <memory>
#include <optional>

class QLabel;
class QPushButton;
class QTableWidget;

namespace bothways::app {

class Preferences;
class StudyDocument;

/// All recordings of the study, with what can be done to one: cut it into runs, drop it, and free
/// the room of those that were dropped. Runs always stay.
class RecordingsDialog final : public QDialog {
    Q_OBJECT

public:
    RecordingsDialog(StudyDocument& document, Preferences& preferences, QWidget* parent = nullptr);
    ~RecordingsDialog() override;

signals:
    void cutWanted(core::RecordingId recording);

private:
    using Freed = std::shared_ptr<core::Result<std::int64_t>>;
    void build();
    void fill();
    void follow();
    void askToDrop();
    void askToCompact();
    void compact();
    void ask(const QString& question, const QString& more, const QString& yes,
             const std::function<void()>& job);
    [[nodiscard]] const storage::RecordingInfo* current() const;
    [[nodiscard]] std::vector<int> runsOf(core::RecordingId recording) const;

    StudyDocument& m_document;
    Preferences& m_preferences;
    QTableWidget* m_list = nullptr;
    QLabel *m_words = nullptr, *m_live = nullptr;
    QPushButton* m_cut = nullptr;
    QPushButton* m_drop = nullptr;
    QPushButton* m_compact = nullptr;
    QFutureWatcher<Freed> m_compacting;
};

} // namespace bothways::app
