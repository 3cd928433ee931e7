/** As much of a parsed DXF as underlays use. The parser passes on whatever numbers are in the file, not finite ones too. */

export interface DxfPoint {
  readonly x: number;
  readonly y: number;
}

export interface DxfVertex extends DxfPoint {
  /** The tangent of a quarter of the arc's angle to the next vertex; left out or 0: straight. */
  readonly bulge?: number;
}

export interface DxfEntity {
  readonly type: string;
  readonly layer?: string;
  readonly visible?: boolean;
  readonly inPaperSpace?: boolean;
  /** Of lines and polylines. */
  readonly vertices?: readonly DxfVertex[];
  /** A polyline that is closed. */
  readonly shape?: boolean;
  readonly is3dPolygonMesh?: boolean;
  readonly isPolyfaceMesh?: boolean;
  readonly center?: DxfPoint;
  readonly radius?: number;
  /** Radians. */
  readonly startAngle?: number;
  readonly endAngle?: number;
  /** Of ellipses. */
  readonly majorAxisEndPoint?: DxfPoint;
  readonly axisRatio?: number;
  /** Of splines. */
  readonly controlPoints?: readonly DxfPoint[];
  readonly fitPoints?: readonly DxfPoint[];
  readonly knotValues?: readonly number[];
  readonly degreeOfSplineCurve?: number;
  /** Of inserts: a block's name, and how it is put down. Rotation in degrees. */
  readonly name?: string;
  readonly position?: DxfPoint;
  readonly rotation?: number;
  readonly xScale?: number;
  readonly yScale?: number;
  readonly columnCount?: number;
  readonly rowCount?: number;
  readonly columnSpacing?: number;
  readonly rowSpacing?: number;
  /** Minus one along z: drawn from behind, so that x runs the other way. */
  readonly extrusionDirectionZ?: number;
  readonly extrusionDirection?: { readonly z?: number };
}

export interface DxfDrawing {
  readonly header?: Readonly<Record<string, unknown>>;
  readonly entities?: readonly DxfEntity[];
  readonly blocks?: Readonly<
    Record<string, { readonly position?: DxfPoint; readonly entities?: readonly DxfEntity[] }>
  >;
  readonly tables?: {
    readonly layer?: {
      readonly layers?: Readonly<Record<string, { readonly visible?: boolean; readonly frozen?: boolean }>>;
    };
  };
}
