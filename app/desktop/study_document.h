// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/result_set.h"
#include "core/result.h"
#include "storage/study_file.h"

#include <QObject>
#include <QString>

#include <memory>

namespace bothways::app {

/// The open study: its file, what stands in it, and the newest answer about it.
///
/// Widgets ask it to change things and hear of the change like everybody else. Every change is on
/// disk when the order returns; the answer follows, computed off the user-interface thread, and
/// until it is there the old one is held and known to be stale.
class StudyDocument final : public QObject {
    Q_OBJECT

public:
    explicit StudyDocument(storage::StudyFile file, QObject* parent = nullptr);
    ~StudyDocument() override;

    [[nodiscard]] const core::Study& study() const;
    [[nodiscard]] QString path() const;
    /// The newest answer; null before the first.
    [[nodiscard]] std::shared_ptr<const ResultSet> result() const;
    /// True while a newer answer is on its way.
    [[nodiscard]] bool isBusy() const;

signals:
    void studyChanged();
    void analysisChanged(std::shared_ptr<const bothways::app::ResultSet> result);
    void busyChanged(bool busy);

private:
    struct Private;
    std::unique_ptr<Private> d;
};

} // namespace bothways::app
