// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/run_draft.h"
#include "core/planning/plan.h"

#include <QObject>

#include <optional>
#include <vector>

class QWidget;

namespace bothways::app {

struct ReadStudy;
struct ReportInput;

class MessageBar;
class PlanPage;
class Preferences;
class StudyDocument;

/// Pages that leave the window: the report of a study as a web page, as PDF or on paper, and the
/// card for the passenger seat. Asks where to, and says what became of it.
class ReportDesk final : public QObject {
    Q_OBJECT

public:
    ReportDesk(QWidget& window, MessageBar& messages, Preferences& preferences, Clock clock);

    // Nothing happens while there is no answer, or while it is hidden.
    void chooseReport(const StudyDocument& document);
    void chooseReportPdf(const StudyDocument& document);
    void printReport(const StudyDocument& document);
    void chooseRunCard(const StudyDocument& document, const core::Plan& plan);
    /// Studies that a plan takes its noise from.
    void chooseNoiseStudies(PlanPage& page);

private:
    [[nodiscard]] std::optional<ReportInput> inputOf(const StudyDocument& document) const;
    void readNoise(PlanPage& page, const QStringList& files);
    void takeNoise(PlanPage& page, const std::vector<ReadStudy>& studies);
    void writePage(const QString& title, const QString& name, const QByteArray& html,
                   const QString& study);
    void writeWhole(const QString& path, const QByteArray& bytes, const QString& study,
                    const QString& news);

    QWidget& m_window;
    MessageBar& m_messages;
    Preferences& m_preferences;
    Clock m_clock;
};

} // namespace bothways::app
