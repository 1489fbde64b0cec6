// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/run_draft.h"
#include "core/base/result.h"

#include <QObject>

#include <functional>

class QWidget;

namespace bothways::app {

class MessageBar;
class Preferences;
class StudyDocument;

/// What someone said about a file: a sheet of numbers alone may look like a recording.
enum class FileIs { unknown, sheet };

/// Jobs on an open study that ask something first: run sheets in and out, copies, its properties,
/// its names, other studies beside it. Says what became of them.
class StudyJobs final : public QObject {
    Q_OBJECT

public:
    StudyJobs(QWidget& window, MessageBar& messages, Preferences& preferences, Clock clock);

    void importSheet(StudyDocument& document, const QString& file, FileIs is = FileIs::unknown);
    /// A file that was taken for a sheet and looks like a recording is offered as what it is.
    /// @param order    what the button says: recordingWanted() follows
    /// @param asSheet  what is done where it is a sheet all the same
    void offerRecording(const QString& file, const QString& order,
                        const std::function<void()>& asSheet);
    /// Runs from the clipboard, copied in a study or in a spreadsheet: all of them or none.
    void pasteRuns(StudyDocument& document);
    void chooseExport(const StudyDocument& document);
    void chooseCopy(StudyDocument& document);
    /// @param page  to begin with: "limitsPage"
    void editProperties(StudyDocument& document, const QString& page = {});
    void renameInAllRuns(StudyDocument& document);
    void walkRound(StudyDocument& document);
    void compare(const StudyDocument& document);

signals:
    /// Of a sheet that was mended, or that is one whatever it looks like.
    void importWanted(const QString& file, bothways::app::FileIs is);
    void recordingWanted(const QString& file);

private:
    [[nodiscard]] core::Outcome add(StudyDocument& document, core::Study runs,
                                    const QString& source);
    void showSheetFaults(const QString& file, const core::Error& error);
    void say(const core::Outcome& outcome, const QString& news);

    QWidget& m_window;
    MessageBar& m_messages;
    Preferences& m_preferences;
    Clock m_clock;
};

/// What files are called in a file dialog.
[[nodiscard]] QString studyFilter();
[[nodiscard]] QString sheetFilter();

} // namespace bothways::app
