/** Made by `npm run contract` from the API's schemas: change those, not this. */
export type paths = Record<string, never>;
export type webhooks = Record<string, never>;
export type components = {
    schemas: {
        Answer: {
            cautions: string[];
            details: components["schemas"]["Drawing"][];
            drawing: components["schemas"]["Drawing"] | null;
            figures: components["schemas"]["Figure"][];
            /** @description As read, defaults filled in; none of a brief one. */
            inputs: {
                [key: string]: unknown;
            };
            /** @description Whether pieces, tables and drawings come with the next answer: only on the phone. */
            is_brief: boolean;
            keeps: components["schemas"]["Keep"][];
            marks: components["schemas"]["Mark"][];
            notes: string[];
            offcuts: components["schemas"]["Offcut"][];
            pieces: components["schemas"]["Piece"][];
            /** @description 1 for a finished answer. */
            progress: number;
            sources: string[];
            step: number;
            tables: components["schemas"]["Table"][];
            tool: string;
            /** @enum {string} */
            units: "in" | "mm";
            /** @description The one sentence that decides, with what was assumed. */
            verdict: string;
        };
        ArcShape: {
            center: [
                number,
                number
            ];
            radius: number;
            /** @enum {string} */
            role: "stock" | "panel" | "wall" | "metal" | "cut" | "waste" | "mark" | "clearance";
            /** @enum {string} */
            shape: "arc";
            start: number;
            sweep: number;
        };
        AreaShape: {
            points: [
                number,
                number
            ][];
            /** @enum {string} */
            role: "stock" | "panel" | "wall" | "metal" | "cut" | "waste" | "mark" | "clearance";
            /** @enum {string} */
            shape: "area";
        };
        AskedInput: {
            choices?: components["schemas"]["Option"][];
            columns?: components["schemas"]["AskedInput"][];
            /** @description Raw value used when nothing is given; null for none. */
            default: unknown;
            /** @description What stands in the empty field. */
            default_text: string;
            help: string;
            kept?: string;
            /** @enum {string} */
            kind: "length" | "angle" | "number" | "count" | "choice" | "flag" | "text" | "rows";
            label: string;
            max_rows?: number;
            /** @description Its unit where millimeters are in force, if it has one. */
            metric?: string;
            min_rows?: number;
            name: string;
            offers?: components["schemas"]["Offer"][];
            only_when: components["schemas"]["Condition"] | null;
            /** @description Which size it is, where other tools know it too. */
            quantity: string;
            required: boolean;
            row?: string;
            slide?: components["schemas"]["Slide"] | null;
            /** @description What of a job can fill it: pieces, or board feet. */
            takes?: string;
            unit: string;
        };
        BuyLine: {
            amount: number;
            amount_text: string;
            cost: number | null;
            /** @description Empty where no price is known. */
            cost_text: string;
            /** @description Of what is on hand, in the unit: not counted in the amount. */
            from_hand: number;
            layout: components["schemas"]["Table"][];
            leaves: components["schemas"]["LeftOver"][];
            longest?: number;
            /** @description Board feet without the waste. */
            net?: number;
            /** @description What a tick of it names. */
            of: string;
            /** @description Places in the shop's offcuts that pieces come out of. */
            offered: number[];
            /** @description What is there already, and where it stands. */
            on_hand: string[];
            paid: number | null;
            proved: boolean | null;
            sold: string;
            state: string;
            stock: string;
            /** @description How many of each of the stock's `on_hand`, in their order. */
            taken: number[];
            title: string;
            unit: string;
            /** @description Percent. */
            waste?: number;
            widest?: number;
            /** @description How the amount is known, or why it is not. */
            words: string;
        };
        CarriedNumber: {
            /** @description Id of the question that gives it. */
            entry: string;
            /** @description The figure or the input there. */
            figure: string;
            /** @description The question's title. */
            from: string;
            input: string;
            text: string;
            /** @description Inches, degrees, or a choice. */
            value: unknown;
        };
        CircleShape: {
            center: [
                number,
                number
            ];
            radius: number;
            /** @enum {string} */
            role: "stock" | "panel" | "wall" | "metal" | "cut" | "waste" | "mark" | "clearance";
            /** @enum {string} */
            shape: "circle";
        };
        Collided: {
            base: unknown;
            mine: unknown;
            /** @description Names and ids, with dots between; empty for the whole document. */
            path: string;
            theirs: unknown;
        };
        Condition: {
            input: string;
            is: unknown[];
        };
        CutGroup: {
            cuts: components["schemas"]["JobCut"][];
            /** @description It is milled or glued up, then others are cut. */
            first: boolean;
            setting: string;
            stock: string;
            title: string;
        };
        Declaration: {
            cautions: string[];
            /** @description A complete set of inputs. */
            example: {
                [key: string]: unknown;
            };
            /** @description Words of the trade to find it by. */
            finds: string[];
            gives: components["schemas"]["GivenFigure"][];
            inputs: components["schemas"]["AskedInput"][];
            /** @enum {string} */
            place: "yard" | "saw" | "site";
            question: string;
            slug: string;
            sources: string[];
            title: string;
            /** @description Of its form: a form kept by an older version is brought up to it. */
            version: number;
        };
        Differing: {
            /** @description The question's title. */
            from: string;
            text: string;
        };
        DimensionShape: {
            from: [
                number,
                number
            ];
            lane: number;
            /** @enum {string} */
            role: "stock" | "panel" | "wall" | "metal" | "cut" | "waste" | "mark" | "clearance";
            /** @enum {string} */
            shape: "dimension";
            text: string;
            to: [
                number,
                number
            ];
        };
        DocumentQuestion: {
            /** @description Who settled it. */
            answered?: string;
            id: string;
            /** @description Names, ids, and places of rows as numbers. */
            path?: unknown[];
            /** @description Two; the first one's stands. */
            sides?: components["schemas"]["QuestionSide"][];
            /** @description A side's value holds several names of the last name's holder. */
            together?: boolean;
        };
        Drawing: {
            box: [
                number,
                number,
                number,
                number
            ];
            description: string;
            /** @description A template, worth a print at its true size. */
            full_size: boolean;
            shapes: (components["schemas"]["AreaShape"] | components["schemas"]["LineShape"] | components["schemas"]["ArcShape"] | components["schemas"]["CircleShape"] | components["schemas"]["DimensionShape"] | components["schemas"]["TagShape"] | components["schemas"]["TextShape"])[];
            title: string;
        };
        Field: {
            /** @description Degrees, where it can be dragged. */
            at?: number | null;
            /** @description What would stand here if nothing was typed. */
            carried?: components["schemas"]["Differing"];
            /** @description Something other than the default. */
            changed?: boolean;
            /** @description Those offered now, where they are not all that are declared. */
            choices?: components["schemas"]["Offered"][];
            chosen?: string;
            /** @description What stands there while nothing is put in: the default as used. */
            empty?: string;
            /** @enum {string} */
            from?: "typed" | "carried" | "default";
            /** @description Texts that may have been meant. */
            instead?: string[];
            message?: string;
            missing?: boolean;
            name: string;
            /** @description The question that a carried value is from. */
            of?: string;
            /** @description Texts that can be tapped instead of typed. */
            offers?: string[];
            pad?: components["schemas"]["InchSplit"];
            /** @description A length in the units in force and in the other ones. */
            reads?: [
                string,
                string
            ];
            rows?: components["schemas"]["RowFields"][];
            /** @description What stands in the field. */
            shown?: string;
            /** @description The entry stops in the middle. */
            unfinished?: boolean;
            /** @description Behind what is shown, where it is not the declared one. */
            unit?: string;
        };
        FieldError: {
            field: string;
            /** @description Texts that may have been meant. */
            instead: string[];
            message: string;
            /** @description Required, and nothing was given yet. */
            missing: boolean;
        };
        Figure: {
            /** @description A second way to say it, or empty. */
            also: string;
            /** @enum {string} */
            kind: "length" | "angle" | "count" | "number" | "money" | "text";
            label: string;
            lead: boolean;
            name: string;
            per: number | null;
            /** @description The label in a word or two, for where it stands small. */
            short: string;
            /** @description In the units asked for. */
            text: string;
            tick: number | null;
            /** @description Inches, degrees, pounds or dollars; a text where the kind is text. */
            value: unknown;
        };
        FinishPlan: {
            /** @description The date it begins on; empty while none is said. */
            begins: string;
            /** @description Id of the question that plans it. */
            entry: string;
            /** @description Title of its item. */
            item: string;
            steps: components["schemas"]["FinishStep"][];
            title: string;
        };
        FinishStep: {
            /** @description Local, 2026-11-30T07:45; empty while no date is said. */
            begins: string;
            /** @description It was ticked too early or too late; else empty. */
            caution: string;
            ends: string;
            /** @description What a tick of it names. */
            of: string;
            state: string;
            /** @description When it is due; of one that is ticked, when it was done. */
            when: string;
            /** @description From when until when the label lets it begin; else empty. */
            window: string;
            words: string;
        };
        FormReply: {
            answer: components["schemas"]["Answer"] | null;
            aside: components["schemas"]["SetAside"][];
            fields: components["schemas"]["Field"][];
            /** @description Without what was set aside, brought up to this version. */
            inputs?: {
                [key: string]: unknown;
            };
            ok: boolean;
            /** @description 1 for a finished answer. */
            progress: number;
            /** @description What to go on with where a better answer may be found. */
            search: number | null;
            /** @description Messages that belong to no field. */
            stray: string[];
            /** @description Of the tool's form. */
            version: number;
            waiting: components["schemas"]["Waiting"] | null;
        };
        FormSaid: {
            aside: components["schemas"]["SetAside"][];
            fields: components["schemas"]["Field"][];
            /** @description Without what was set aside, brought up to this version. */
            inputs?: {
                [key: string]: unknown;
            };
            ok: boolean;
            /** @description Messages that belong to no field. */
            stray: string[];
            /** @description Of the tool's form. */
            version: number;
            waiting: components["schemas"]["Waiting"] | null;
        };
        GivenFigure: {
            /** @enum {string} */
            kind: "length" | "angle" | "count" | "number" | "money" | "text";
            label: string;
            name: string;
            /** @description Which size it is; empty for one of no use elsewhere. */
            quantity: string;
            /** @description The label in a word or two. */
            short: string;
            sometimes: boolean;
        };
        InchSplit: {
            after: string;
            before: string;
            share: number | null;
        };
        Job: {
            finish: components["schemas"]["FinishPlan"][];
            items: components["schemas"]["JobItem"][];
            /** @description 1 for a finished reply. */
            progress: number;
            quote: components["schemas"]["Quote"] | null;
            saw: components["schemas"]["Saw"];
            site: components["schemas"]["Site"];
            warnings: string[];
            yard: components["schemas"]["Yard"];
        };
        JobCheck: {
            of: string;
            state: string;
            words: string;
        };
        JobCut: {
            /** @description What is on hand that a spoiled one comes out of; else empty. */
            again: string;
            ends: components["schemas"]["PieceEnd"][];
            ends_text: string;
            entry: string;
            item: string;
            length: number;
            name: string;
            /** @description What a tick of it names. */
            of: string;
            per: number | null;
            /** @description The size first cut to; empty where nothing is left on. */
            rough_text: string;
            section_text: string;
            short_text: string;
            /** @description Pieces spoiled under this mark. */
            spoiled: number;
            stale: components["schemas"]["Stale"] | null;
            state: string;
            /** @description What is pencilled on it. */
            tag: string;
            text: string;
            thickness: number | null;
            tick: number | null;
            width: number | null;
        };
        JobEntry: {
            carried: components["schemas"]["CarriedNumber"][];
            errors: components["schemas"]["FieldError"][];
            figures: components["schemas"]["Figure"][];
            id: string;
            letter: string;
            marks: number;
            pieces: number;
            title: string;
            tool: string;
            /** @description Empty where it is not answered. */
            verdict: string;
            waiting: components["schemas"]["Waiting"] | null;
        };
        JobItem: {
            entries: components["schemas"]["JobEntry"][];
            id: string;
            title: string;
        };
        JobMark: {
            entry: string;
            from: string;
            label: string;
            of: string;
            per: number | null;
            state: string;
            tag: string;
            text: string;
            tick: number | null;
            title: string;
            value: number;
        };
        Keep: {
            /** @description The input with rows that the list belongs to. */
            input: string;
            /** @description Raw values by column. */
            row: {
                [key: string]: unknown;
            };
            /** @description What is kept. */
            words: string;
        };
        LeftOver: {
            count: number;
            length: string;
            /** @description Empty of a stick. */
            width: string;
        };
        LineShape: {
            from: [
                number,
                number
            ];
            /** @enum {string} */
            role: "stock" | "panel" | "wall" | "metal" | "cut" | "waste" | "mark" | "clearance";
            /** @enum {string} */
            shape: "line";
            to: [
                number,
                number
            ];
        };
        Mark: {
            from: string;
            label: string;
            per: number | null;
            tag: string;
            text: string;
            tick: number | null;
            value: number;
        };
        MarkedItem: {
            checks: components["schemas"]["JobCheck"][];
            item: string;
            marks: components["schemas"]["JobMark"][];
            title: string;
        };
        Meeting: {
            collisions: components["schemas"]["Collided"][];
            /** @description What both are to have; null where it is deleted. */
            document: components["schemas"]["MetState"] | null;
            /** @description It says what the phone has. */
            is_mine: boolean;
            /** @description It says what the server has. */
            is_theirs: boolean;
        };
        MetState: {
            body: {
                [key: string]: unknown;
            };
            schema: number;
            units: string;
        };
        Offcut: {
            count: number;
            /** @description Inches. */
            length: number;
            /** @description Inches; none of a stick. */
            width: number | null;
        };
        Offer: {
            only_when: components["schemas"]["Condition"] | null;
            value: string;
        };
        Offered: {
            label: string;
            value: string;
        };
        Option: {
            label: string;
            only_when: components["schemas"]["Condition"] | null;
            value: string;
        };
        Pattern: {
            /** @description Slug of the tool whose drawing stands for it. */
            drawing: string;
            questions: components["schemas"]["PatternQuestion"][];
            slug: string;
            /** @description Titles of what its pieces are cut from. */
            stock: string[];
            title: string;
            version: number;
            /** @description Words of the trade to find it by. */
            words: string[];
        };
        PatternQuestion: {
            /** @description Inputs that are asked first: what a tape or a catalog says. */
            asks: string[];
            /** @description What the pattern's other questions name it by. */
            key: string;
            /** @description Inputs that it begins with. */
            presets: {
                [key: string]: unknown;
            };
            /** @description Empty where the tool's own will do. */
            title: string;
            tool: string;
        };
        Piece: {
            count: number;
            ends: components["schemas"]["PieceEnd"][];
            ends_text: string;
            /** @description What is marked on the tape. */
            length: number;
            name: string;
            per: number | null;
            /** @description Tells the stocks of one question apart: frame, panel. */
            role: string;
            /** @description Thickness and width, as far as they are known. */
            section_text: string;
            short_point: number | null;
            short_text: string;
            stock: string;
            tag: string;
            text: string;
            thickness: number | null;
            tick: number | null;
            width: number | null;
        };
        PieceEnd: {
            /** @description Degrees the blade leans. */
            bevel: number;
            joint: string;
            note: string;
            /** @description Degrees off a square cut. */
            saw: number;
        };
        QuestionSide: {
            /** @description A person's name. */
            by: string;
            value: unknown;
        };
        Quote: {
            /** @description What is still asked before there is a price. */
            asks: string[];
            build: components["schemas"]["QuoteRow"][];
            compare: components["schemas"]["QuoteCompare"] | null;
            /** @description How the price would be by today's numbers; empty where it is the same. */
            drift: string;
            due: components["schemas"]["QuoteDue"] | null;
            faults: components["schemas"]["QuoteFault"][];
            /** @description What stays of the price, in words. */
            kept: string;
            learned: components["schemas"]["QuoteLearned"][];
            lines: components["schemas"]["QuoteLine"][];
            /** @description Dollars, before tax. */
            price: number | null;
            price_text: string;
            warnings: string[];
        };
        QuoteCompare: {
            rows: components["schemas"]["QuoteCompared"][];
            /** @description What was kept of the price in the end. */
            words: string;
        };
        QuoteCompared: {
            /** @description Empty where no hours worked were said. */
            actual_text: string;
            hours_text: string;
            id: string;
            material_text: string;
            over_text: string;
            paid_text: string;
            title: string;
        };
        QuoteDue: {
            extras: components["schemas"]["QuoteExtra"][];
            /** @description Of the change orders agreed on. */
            extras_total: number;
            extras_total_text: string;
            left: number;
            left_text: string;
            paid: number;
            paid_text: string;
            payments: components["schemas"]["QuotePayment"][];
            stages: components["schemas"]["QuoteStage"][];
            /** @description Why there are no stages; else empty. */
            stages_fault: string;
            tax: number;
            /** @description The price holds it: the total is the price. */
            tax_included: boolean;
            tax_text: string;
            /** @description Empty for no tax. */
            tax_words: string;
            /** @description Price and tax, without change orders. */
            total: number;
            total_text: string;
            whole: number;
            whole_text: string;
        };
        QuoteExtra: {
            days_text: string;
            id: string;
            price: number;
            price_text: string;
            state: string;
            title: string;
        };
        QuoteFault: {
            /** @description As `rates.rate`, `items.` or `lines.` with an id and `.hours`. */
            field: string;
            message: string;
        };
        QuoteLearned: {
            label: string;
            minutes: number;
            operation: string;
        };
        QuoteLine: {
            count: number;
            hours: number | null;
            hours_text: string;
            /** @description Of the item or the line; empty for what belongs to the whole job. */
            id: string;
            is_typed: boolean;
            material_text: string;
            operations: components["schemas"]["QuoteOperation"][];
            /** @description Dollars: its share of the price. */
            price: number | null;
            price_text: string;
            title: string;
        };
        QuoteOperation: {
            count: number;
            label: string;
            /** @description Of one; null where the shop has not said. */
            minutes: number | null;
            operation: string;
        };
        QuotePayment: {
            amount: number;
            id: string;
            /** @description Empty where no amount was said. */
            text: string;
        };
        QuoteRow: {
            label: string;
            name: string;
            text: string;
            value: number;
        };
        QuoteStage: {
            amount: number;
            id: string;
            name: string;
            percent_text: string;
            text: string;
        };
        Refused: {
            errors: components["schemas"]["FieldError"][];
            ok: boolean;
        };
        RowFields: {
            fields: components["schemas"]["Field"][];
            instead?: string[];
            message?: string;
            missing?: boolean;
        };
        Saw: {
            groups: components["schemas"]["CutGroup"][];
            steps: components["schemas"]["SawStep"][];
        };
        SawStep: {
            /** @description The question that says it; empty where the stock does. */
            entry: string;
            /** @description What a tick of it names. */
            of: string;
            state: string;
            title: string;
            words: string;
        };
        SearchReply: {
            answer: components["schemas"]["Answer"] | null;
            ok: boolean;
            /** @description 1 for a finished answer. */
            progress: number;
            /** @description What to go on with where a better answer may be found. */
            search: number | null;
        };
        SetAside: {
            path: string;
            value: unknown;
        };
        Settled: {
            document: {
                [key: string]: unknown;
            };
        };
        Site: {
            items: components["schemas"]["MarkedItem"][];
        };
        Slide: {
            from: number;
            to: number;
        };
        Stale: {
            /** @description Inches of the size farthest off, positive where it can be taken down. */
            by: number;
            was: number;
            words: string;
        };
        StepChoice: {
            /** @description As it stands beside the units, in the page's head. */
            short: string;
            /** @description Steps it stands for; choosing it sets the first. */
            steps: number[];
            words: string;
        };
        StepChoices: {
            choices: components["schemas"]["StepChoice"][];
            title: string;
            /** @enum {string} */
            units: "in" | "mm";
        };
        Table: {
            columns: string[];
            name: string;
            pick: number | null;
            rows: string[][];
        };
        TagShape: {
            at: [
                number,
                number
            ];
            /** @enum {string} */
            role: "stock" | "panel" | "wall" | "metal" | "cut" | "waste" | "mark" | "clearance";
            /** @enum {string} */
            shape: "tag";
            text: string;
        };
        TextShape: {
            /** @enum {string} */
            anchor: "start" | "middle" | "end";
            at: [
                number,
                number
            ];
            /** @enum {string} */
            role: "stock" | "panel" | "wall" | "metal" | "cut" | "waste" | "mark" | "clearance";
            /** @enum {string} */
            shape: "text";
            text: string;
        };
        Waiting: {
            field: string;
            words: string;
        };
        Yard: {
            cost: number;
            cost_text: string;
            lines: components["schemas"]["BuyLine"][];
            paid: number;
            paid_text: string;
        };
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
};
export type $defs = Record<string, never>;
export type operations = Record<string, never>;
