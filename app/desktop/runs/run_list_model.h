// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/study_document.h"
#include "app/desktop/runs/common_notes.h"
#include "app/desktop/runs/run_fields.h"
#include "app/desktop/runs/run_rows.h"

#include <QAbstractTableModel>
#include <QPointer>

namespace bothways::app {

/// Runs in the clipboard, as a run sheet.
inline constexpr const char* kRunsMime = "application/x-bothways-runs";

class Preferences;

/// The day as it was driven: a row a run, in order of start, discarded ones in their place.
///
/// Listens to the document and edits through it; rows come and go around what really changed.
class RunListModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    // Plain enumerations: Qt speaks int.
    enum Column {
        blockColumn,
        pairColumn,
        numberColumn,
        stateColumn,
        startColumn,
        directionColumn,
        settingColumn,
        consumptionColumn,
        remarksColumn,   ///< why it does not count, circumstances, notes
        firstFieldColumn ///< from here on a column for each other field, hidden at first
    };
    enum Role {
        runIdRole = Qt::UserRole, ///< long long
        blockPlaceRole,           ///< BlockPlace
        blockLinesRole,           ///< QStringList: what the block's rows say, from the top
        deviceRole,               ///< bool: configuration B
        bracketsRole,             ///< BracketPieces
        lanesRole,                ///< int: widest number of lanes in the list
        stateRole,                ///< State
        gradeRole,                ///< int: worst open finding's core::Grade; -1 without
        tagsRole,                 ///< RunTags
        reasonRole,               ///< QString: why the run does not count; empty where it does
        questionRole,             ///< QString: what is odd about the cell; empty mostly
        hiddenRole                ///< bool: the number is kept from sight (blind screening)
    };
    using State = RunRow::State;
    using enum RunRow::State;

    RunListModel(StudyDocument& document, Preferences& preferences, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

    [[nodiscard]] const core::Run& runAt(int row) const;
    [[nodiscard]] int rowOf(core::RunId id) const; ///< -1 where there is none
    /// Which field a column shows; nothing for block, pair, state and tags.
    [[nodiscard]] static std::optional<RunField> fieldOf(int column);
    [[nodiscard]] static Qt::Alignment alignmentOf(int column);
    [[nodiscard]] static QString stateName(State state);

    /// Runs as text with a header, tabs between the cells: what is written of each, and the fields
    /// `further`. What is hidden stays hidden.
    [[nodiscard]] QString copied(const std::vector<int>& rows,
                                 const std::vector<RunField>& further) const;
    /// The same runs whole, as a run sheet; empty while consumption is hidden.
    [[nodiscard]] QByteArray copiedSheet(const std::vector<int>& rows) const;
    /// What stands above the list, as it is so in all runs or in most; empty: nothing.
    [[nodiscard]] QString commonWords() const;

signals:
    /// A consumption typed into a cell is far off: not written before somebody confirms it.
    void unconfirmed(bothways::core::RunId id, const bothways::core::Consumption& typed);
    /// An edit was not taken: the sentence says what was expected.
    void refused(const QString& sentence);
    void commonWordsChanged(const QString& words);

private:
    void takeStudy();
    void takeCommon();
    void takeRows(std::vector<RunRow> rows);
    void refresh();
    [[nodiscard]] bool isHidden(int column) const;
    [[nodiscard]] QString text(const RunRow& row, int column) const;
    [[nodiscard]] QString reason(const RunRow& row) const;
    [[nodiscard]] QString remarks(const RunRow& row) const;
    [[nodiscard]] QString toolTip(const RunRow& row, int column) const;
    [[nodiscard]] QString question(const RunRow& row, int column) const;
    [[nodiscard]] QVariant ownRole(const RunRow& row, int column, int role) const;

    StudyDocument& m_document;
    Preferences& m_preferences;
    std::vector<RunRow> m_rows;
    CommonNotes m_common;
};

} // namespace bothways::app

Q_DECLARE_METATYPE(bothways::app::BlockPlace)
