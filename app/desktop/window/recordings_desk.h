// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/screening/finding.h"
#include "core/study/study.h"

#include <QObject>
#include <QPointer>

#include <optional>

class QWidget;

namespace bothways::app {

class FindingsPanel;
class MessageBar;
class Preferences;
class RecordingsPanel;
class StudyDocument;
class StudyPage;

/// What the window does with the recordings of the study that is open: shows them beside the runs
/// and findings, takes in new ones, cuts them. One for a study, and goes with it; so do its
/// dialogs, which are children of the runs' page.
class RecordingsDesk final : public QObject {
    Q_OBJECT

public:
    RecordingsDesk(StudyDocument& document, StudyPage& page, FindingsPanel& findings,
                   MessageBar& messages, Preferences& preferences);

    /// The panel, at what was chosen before somebody looked at it.
    [[nodiscard]] QWidget* makePanel();
    void showFinding(const core::Finding& finding);
    [[nodiscard]] bool isLoading() const;

    /// Asks for a recording's file: fileChosen() follows.
    void chooseFile();
    /// Shows what is in a recording's file, to be taken in.
    void takeIn(const QString& file);
    void list();
    void cut(core::RecordingId id);

signals:
    void fileChosen(const QString& file);
    /// A finding was chosen in the panel.
    void findingActivated(const core::Finding& finding);

private:
    StudyDocument& m_document;
    StudyPage& m_page;
    FindingsPanel& m_findings;
    MessageBar& m_messages;
    Preferences& m_preferences;
    QPointer<RecordingsPanel> m_panel;     ///< once somebody looks at it
    std::optional<core::Finding> m_wanted; ///< whose place it shows
};

} // namespace bothways::app
