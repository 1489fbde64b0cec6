// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/screening/finding.h"
#include "core/study/study.h"

#include <QWidget>

#include <optional>
#include <tuple>
#include <vector>

class QLabel;
class QPushButton;

namespace bothways::app {

class Preferences;
class StudyDocument;
class TraceLoader;
class TraceView;

/// The study's recordings, as they follow its edits, the theme and the units: which run has one,
/// what it shows, and what it says about consumption beside the number that was typed.
///
/// Reads nothing until it is seen. While consumption is hidden, so are the channels that tell it.
class RecordingsPanel final : public QWidget {
    Q_OBJECT

public:
    RecordingsPanel(StudyDocument& document, Preferences& preferences, QWidget* parent = nullptr);
    ~RecordingsPanel() override;

    /// Shows a run's recording, if it has one and is not on show already.
    void showRun(int number);
    void showFinding(const core::Finding& finding);
    [[nodiscard]] TraceView& view() const { return *m_view; }
    /// True while something that is on show is still being read.
    [[nodiscard]] bool isLoading() const;

signals:
    void runActivated(int number);
    void findingActivated(const core::Finding& finding);
    void importWanted();
    void listWanted(); ///< of all recordings

protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// What decides which samples a run has.
    struct Part {
        core::RunId run{};
        core::RecordingId recording{};
        double offset_s = 0.0;
        std::optional<double> duration_s;
        friend bool operator==(const Part&, const Part&) = default;
    };
    void build();
    void takeStudy();
    void fill();
    void dress();
    void say();
    [[nodiscard]] QString liveWords() const;
    [[nodiscard]] std::vector<Part> parts() const;
    [[nodiscard]] QString consumptionWords() const;

    StudyDocument& m_document;
    Preferences& m_preferences;
    TraceLoader* m_loader;
    TraceView* m_view;
    QLabel* m_words = nullptr;
    QPushButton* m_list = nullptr;
    std::vector<Part> m_parts; ///< that the loader has open
    bool m_opened = false;
    int m_run = 0;                          ///< chosen in the run list
    std::optional<core::Finding> m_finding; ///< to be shown when its recording is there
};

} // namespace bothways::app
